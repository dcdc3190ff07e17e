package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.WarrantyCovers;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.geometry.Explanation;
import weatherlap.sim.laps.LeakExplanation;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobCost;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;

/**
 * One opening's numbers as trees down to measurements and table rows, made from the takeoff and the draws that its results come from.
 *
 * @param glassExisting ft²
 * @param glass ft²
 * @param glassLost ft²
 * @param clearArea net clear opening, ft²
 * @param labour mean person-minutes at the opening alone
 * @param material mean USD at the opening alone
 * @param price share of the house's price, USD
 * @param leak chance of leak damage within the horizon, a fraction; the sum of what each lap fault adds
 */
public record OpeningExplanation(
        Method method,
        Amount glassExisting,
        Amount glass,
        Amount glassLost,
        Amount clearArea,
        Amount labour,
        Amount material,
        Amount price,
        Amount leak) {
    /** In the order in which they are read. */
    public List<Amount> all() {
        return List.of(glassLost, clearArea, labour, material, price, leak);
    }

    static OpeningExplanation of(MethodDraws draws, int opening, Assumptions assumptions) {
        HouseTakeoff takeoff = draws.takeoff();
        OpeningTakeoff at = takeoff.openings().get(opening);
        LeakExplanation leak = LeakExplanation.of(
                at.leaks(), draws.leaks().contribution()[opening], takeoff.laps(), at.opening(), at.rain()::explain);
        Explanation replaced = Explanation.replaced(at.geometry(), assumptions);
        return new OpeningExplanation(
                takeoff.method(),
                Explanation.existing(at.geometry(), assumptions).glass(),
                replaced.glass(),
                Explanation.glassLost(at.geometry(), assumptions),
                replaced.clearArea(),
                takeoff.work().openings().get(opening).labour(),
                takeoff.work().materialOfOpening(opening),
                takeoff.priceOfOpening(opening, housePrice(draws, assumptions.scenario())),
                leak.tree());
    }

    /** What the shop pays for leaks under its warranty. */
    private static Amount warranty(MethodDraws draws, Scenario scenario) {
        double warranted = Arrays.stream(draws.leaks().means().warranted()).sum();
        WarrantyCovers covers = scenario.choice(Choice.WARRANTY_COVERS, WarrantyCovers.class);
        return Amount.formula(
                "repairs under the warranty, which covers " + covers.inWords(),
                draws.expected().warrantyUsd(),
                "USD",
                List.of(
                        Amount.given("damages within the warranty, discounted", warranted, "openings"),
                        Amount.formula(
                                "mean cost of a repair",
                                scenario.repairUsd().mean(),
                                "USD",
                                List.of(
                                        scenario.amount(Scalar.REPAIR_COST_LOW_USD),
                                        scenario.amount(Scalar.REPAIR_COST_USD),
                                        scenario.amount(Scalar.REPAIR_COST_HIGH_USD))),
                        scenario.amount(Scalar.WARRANTY_YEARS),
                        scenario.amount(Scalar.DISCOUNT_RATE)));
    }

    private static Amount housePrice(MethodDraws draws, Scenario scenario) {
        JobCost cost = draws.expected();
        List<Amount> parts = new ArrayList<>(List.of(
                Amount.given("labor of the house", cost.labourUsd(), "USD"),
                draws.takeoff().work().material(),
                warranty(draws, scenario),
                scenario.amount(Scalar.SERVICE_RESERVE)));
        parts.addAll(
                switch (draws.pricing().way()) {
                    case GROSS_MARGIN -> List.of(scenario.amount(Scalar.GROSS_MARGIN));
                    case OVERHEAD_AND_NET ->
                        List.of(
                                scenario.amount(Scalar.NET_PROFIT),
                                scenario.amount(Scalar.OVERHEAD_USD_PER_CREW_HOUR),
                                Amount.given("crew hours", cost.crewHours(), "h"));
                });
        return Amount.formula("price of the house: cost / (1 − profit − service)", draws.priceUsd(), "USD", parts);
    }
}
