package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weatherlap.analysis.callbacks.FittedTables;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.TableView;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.MethodResult;

/**
 * Price, days, glass and leaks of both methods side by side.
 *
 * <p>The range of a price is the price times the 10 and the 90 % point of the cost to the shop over its mean: what the same job would
 * be priced at if its cost were known to come out there.
 */
record Offer(HouseResult house, Map<Method, HouseTakeoff> takeoffs, Assumptions assumptions) {
    TableView table() {
        MethodResult full = house.first();
        MethodResult insert = house.second();
        String years = Numbers.count(scenario().whole(Scalar.HORIZON_YEARS), "year", "years");
        return TableView.of("The whole house by either method")
                .texts("")
                .numbers(full.method().label(), insert.method().label())
                .row("Price (likely range)", price(full), price(insert))
                .row("\u2013 windows and material", material(full), material(insert))
                .row("\u2013 work", work(full), work(insert))
                .row("\u2013 shop, later service, profit", rest(full), rest(insert))
                .row(
                        "Days for a crew of " + scenario().whole(Scalar.CREW_SIZE) + " (person-hours)",
                        days(full),
                        days(insert))
                .row("Glass against today", glass(full), glass(insert))
                .row("Siding panels down and back", panels(full.method()), panels(insert.method()))
                .row("Chance of leak damage in " + years + "*", leaks(full, insert), leaks(insert, full))
                .build();
    }

    /** What a price pays for, in words. */
    List<String> priceHolds() {
        List<String> holds = new ArrayList<>();
        holds.add("Both prices hold the new windows, sealant, foam, trim, clean-up, the dump fee"
                + (scenario().value(Scalar.PERMIT_USD) > 0 ? ", a permit" : "")
                + (house.house().leadSafe() ? ", lead-safe work" : "")
                + " and mending leaks under the warranty of "
                + Numbers.count(scenario().whole(Scalar.WARRANTY_YEARS), "year", "years") + "."
                + (house.house().cladding().inCourses()
                        ? " Full-flange adds flashing tape, siding work and new edges inside."
                        : " Full-frame adds a sill pan, a sealed joint and trim outside.")
                + " The insert adds metal capping outside.");
        holds.add("* Anywhere in the house: "
                + (ownRecords()
                        ? "at the level of this shop\u2019s own records."
                        : "a judgement, to compare and not to forecast.")
                + " All ranges: 8 times in 10.");
        return holds;
    }

    /** A figure where the shop's own records bear one, else a rank. */
    private String leaks(MethodResult own, MethodResult other) {
        return ownRecords()
                ? Phrases.range(own.leakScore())
                : LeakRank.of(own, other).word();
    }

    private boolean ownRecords() {
        return FittedTables.isFitted(assumptions);
    }

    private Scenario scenario() {
        return assumptions.scenario();
    }

    private static String price(MethodResult method) {
        double perCost = method.priceUsd() / method.costUsd().mean();
        return Phrases.usd(method.priceUsd()) + " ("
                + Phrases.usd(perCost * method.costUsd().p10()).substring(1) + " to "
                + Phrases.usd(perCost * method.costUsd().p90()).substring(1) + ")";
    }

    private static String material(MethodResult method) {
        return Phrases.usd(method.costParts().get("material"));
    }

    private static String work(MethodResult method) {
        return Phrases.usd(method.costParts().get("labour"));
    }

    private static String rest(MethodResult method) {
        return Phrases.usd(method.priceUsd()
                - method.costParts().get("material")
                - method.costParts().get("labour"));
    }

    private static String days(MethodResult method) {
        return Numbers.count(method.crewDays(), "day", "days") + " ("
                + Numbers.plain(method.labourHours().p10(), 0) + " to "
                + Numbers.plain(method.labourHours().p90(), 0) + " h)";
    }

    private static String glass(MethodResult method) {
        return Phrases.glass(method.glassLostFt2(), method.glassExistingFt2());
    }

    private String panels(Method method) {
        int panels = takeoffs.get(method).panelsDown().stream()
                .mapToInt(count -> count)
                .sum();
        return panels == 0 ? "none" : Numbers.plain(panels, 0);
    }
}
