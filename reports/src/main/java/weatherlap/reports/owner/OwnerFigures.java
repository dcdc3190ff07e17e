package weatherlap.reports.owner;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import weatherlap.analysis.choice.Decision;
import weatherlap.analysis.choice.EvenPrice;
import weatherlap.analysis.choice.TippingPoints;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Limit;
import weatherlap.analysis.rule.RuleScore;
import weatherlap.analysis.season.SeasonStudy;
import weatherlap.analysis.tables.Answer;
import weatherlap.analysis.tables.Comparison;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.run.Results;

/**
 * The numbers of the two pages.
 *
 * @param years that the family looks ahead
 * @param runs of the numbers, each with other values within their ranges
 * @param even the price at which both methods earn the shop the same
 * @param inSeason the same where a crew day is worth what it is in the shop's season; empty where there is no season
 * @param houses shown, in the order of the page
 * @param turning where the answer turns
 * @param repairUsd assumed for mending one damaged opening, mean
 * @param glassUsdPerFt2Year assumed for a square foot of glass
 */
public record OwnerFigures(
        Answer answer,
        int years,
        int runs,
        EvenPrice even,
        Optional<InSeason> inSeason,
        List<OwnHouse> houses,
        Decision decision,
        LeakToFind leak,
        TippingPoints turning,
        double repairUsd,
        double glassUsdPerFt2Year) {
    public OwnerFigures {
        houses = List.copyOf(houses);
    }

    /**
     * What the season asks for.
     *
     * @param crewDayUsd what one more day of a crew is worth in it
     * @param perHouseUsd what to add to the price of the method that earns less a crew day; 0 where it needs nothing
     */
    public record InSeason(double crewDayUsd, double perHouseUsd) {}

    /**
     * One house.
     *
     * @param number in the order of the page, from 1
     */
    public record OwnHouse(int number, HouseChoice choice) {
        /** Its name within the page. */
        public String anchor() {
            return "house-" + number;
        }

        /** The method that stands for one of the two at this house. */
        Method there(Method named) {
            Contrast here = choice.result().contrast();
            return named == choice.result().named().first() ? here.first() : here.second();
        }

        /** The one of the two that is better for the family here, by its usual name. */
        Method better() {
            return choice.result()
                    .named()
                    .named(choice.familyMethod(), choice.result().contrast());
        }

        /** The one of the two that earns the shop more a crew day here, by its usual name. */
        Method earnsMore() {
            Contrast named = choice.result().named();
            return choice.shopEarnsMoreUsd() > 0 ? named.first() : named.second();
        }

        /** Over a wall with windows, in.; 0 where there are none. */
        double shortestOverhangIn() {
            return choice.result().house().elevations().stream()
                    .filter(wall -> !wall.openings().isEmpty())
                    .mapToDouble(Elevation::overhangIn)
                    .min()
                    .orElse(0);
        }

        /** What the family saves with the first method rather than the second, USD over the years. */
        public double familySavesUsd() {
            return -choice.differenceUsd();
        }
    }

    /** Of a comparison, what was decided on it and what it rests on. */
    public static OwnerFigures of(
            Comparison comparison, Decision decision, Assumptions assumptions, Optional<SeasonStudy> season) {
        List<HouseChoice> shown = comparison.shown();
        Results results = comparison.results();
        Pricing pricing = Pricing.of(assumptions.scenario());
        EvenPrice even = EvenPrice.of(comparison.answer(), pricing.serviceReserve());
        return new OwnerFigures(
                comparison.answer(),
                assumptions.scenario().whole(Scalar.HORIZON_YEARS),
                comparison.draws(),
                even,
                season.map(study -> study.dayPrice().usd())
                        .map(usd -> new InSeason(
                                usd,
                                Math.max(
                                        0,
                                        EvenPrice.raiseUsd(
                                                comparison.answer(), pricing.serviceReserve(), even.raised(), usd)))),
                IntStream.range(0, shown.size())
                        .mapToObj(h -> new OwnHouse(h + 1, shown.get(h)))
                        .toList(),
                decision,
                LeakToFind.of(results.houses()),
                TippingPoints.of(results, pricing),
                assumptions.scenario().repairUsd().mean(),
                assumptions.scenario().value(Scalar.GLASS_VALUE_USD_PER_FT2_YEAR));
    }

    Method usual() {
        return answer.cheaper();
    }

    Method other() {
        return answer.contrast().other(usual());
    }

    /** Of the houses shown those that the other method is better for, the one that gains most first. */
    List<OwnHouse> departing() {
        return withChoice().stream()
                .filter(house -> house.better() == other())
                .sorted(Comparator.comparingDouble((OwnHouse house) -> -Math.abs(house.familySavesUsd())))
                .toList();
    }

    /** What the other method saves at a house that departs, mean, USD; 0 where none departs. */
    double departingEachUsd() {
        return answer.departures() == 0 ? 0 : answer.savedByDepartingUsd() / answer.departures();
    }

    /** What the usual method saves at a house that it is better for, mean, USD; 0 where there is none. */
    double keepingEachUsd() {
        return answer.keeping() == 0 ? 0 : answer.savedByKeepingUsd() / answer.keeping();
    }

    double perDayUsd(Method method) {
        return answer.of(method).grossProfitPerCrewDayUsd();
    }

    /** What the shop gains of a crew day at a house by the other method rather than the usual one, USD. */
    double shopGainsUsd(OwnHouse house) {
        double first = house.choice().shopEarnsMoreUsd();
        return usual() == answer.contrast().first() ? -first : first;
    }

    /** How far the price of a house drops by the other method's plan rather than the usual one's, USD; negative where it rises. */
    double priceDropsUsd(OwnHouse house) {
        return house.choice().wherever().get(house.there(usual())).priceUsd()
                - house.choice().wherever().get(house.there(other())).priceUsd();
    }

    /** The chance of leak damage at a house by the plan of a method, 0 to 1. */
    double leakProbability(OwnHouse house, Method named) {
        return house.choice().wherever().get(house.there(named)).leakProbability();
    }

    /** Whether the other method's plan leaves more leak risk at a house than a family should take, where another plan would not. */
    boolean isTooRisky(OwnHouse house) {
        return house.choice().overLimit().contains(house.there(other()));
    }

    /** Houses shown at which something closes a method at a window or more. */
    long closed(Method method, Limit limit) {
        return houses.stream()
                .filter(house -> house.choice().closed(method).contains(limit))
                .count();
    }

    /** Houses shown that have a choice. */
    List<OwnHouse> withChoice() {
        return houses.stream().filter(house -> !house.choice().onePlan()).toList();
    }

    /** What the rule costs the average family more than the best pick at each house, USD. */
    double ruleCostsMoreUsd() {
        return decision.study().scores().stream()
                .filter(score -> score.name().equals("rule"))
                .mapToDouble(RuleScore::regretUsd)
                .findFirst()
                .orElseThrow();
    }

    /** What the cheapest plans, window by window, save the average family on the usual method everywhere, USD. */
    double mixingSavesUsd() {
        return answer.of(usual()).planHorizonCostUsd() - answer.plans().horizonCostUsd();
    }

    /** What mending one damaged opening would cost where both methods cost the family the same, USD. */
    OptionalDouble evenRepairUsd() {
        return times(turning.repairFactor(), repairUsd);
    }

    /** What a square foot of glass would be worth a year where both do, USD. */
    OptionalDouble evenGlassUsd() {
        return times(turning.glassFactor(), glassUsdPerFt2Year);
    }

    private static OptionalDouble times(OptionalDouble factor, double value) {
        return factor.isPresent() ? OptionalDouble.of(factor.getAsDouble() * value) : OptionalDouble.empty();
    }

    /** What the season asks for more at a window, mean, USD. */
    double perWindowUsd(InSeason season) {
        return answer.openings() == 0 ? 0 : season.perHouseUsd() * answer.houses() / answer.openings();
    }

    /** What the average family keeps of its saving once the usual method's price is raised, USD; negative where nothing is left. */
    double keptAfterRaiseUsd() {
        return answer.savedPerHouseUsd().mean() - even.perHouseUsd();
    }
}
