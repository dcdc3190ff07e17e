package weatherlap.analysis.tables;

import java.io.Serializable;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Plan;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.Summary;

/**
 * Which method costs less over a whole portfolio, by how much, and how sure that is: each at every window that it can be built at. The
 * family's limit of leak damage is no part of that, since the cost holds the damage already; how often a default would break it is counted.
 *
 * <p>One draw is the same world for every house, so the difference of the portfolio in a draw is the sum over its houses.
 *
 * @param contrast the two; at a house that one of them has no way to, another stands in its place
 * @param standIns houses at which another method stands in the place of one of the two
 * @param cheaper the method with the lower mean horizon cost over the portfolio
 * @param savedPerHouseUsd what it saves against the other, over the draws, USD a house; negative where it costs more
 * @param probability share of the draws in which it costs less
 * @param keeping houses that this method, wherever no limit closes it, is expected to cost less over the horizon than the other
 * @param savedByKeepingUsd what it saves at those houses, expected, USD over the portfolio
 * @param departures houses that the other method, wherever no limit closes it, is expected to cost less over the horizon than this one,
 *     wherever none closes it
 * @param savedByDepartingUsd what the other plan saves at those houses, expected, USD over the portfolio
 * @param heldBack houses that the other method would be expected to cost less all over, and that limits keep from departing
 * @param methods means per house
 * @param plans the cheapest plan of each house, window by window
 */
public record Answer(
        Contrast contrast,
        int standIns,
        Method cheaper,
        Summary savedPerHouseUsd,
        double probability,
        int keeping,
        double savedByKeepingUsd,
        int departures,
        double savedByDepartingUsd,
        int heldBack,
        int houses,
        int openings,
        Map<Method, PerHouse> methods,
        FamilyPlans plans) {
    public Answer {
        methods = Map.copyOf(methods);
    }

    /**
     * Means over the houses of a portfolio, each wholly done by one method.
     *
     * @param anyLeak chance of leak damage at any opening of a house, mean over the houses, 0 to 1
     * @param grossProfitPerCrewDayUsd all gross profit over all crew days: the ratio of the means
     * @param planHorizonCostUsd horizon cost of the method at every window that it can be built at, other methods elsewhere
     * @param overLimit houses where that breaks the family's limit of leak damage while some plan keeps it
     */
    public record PerHouse(
            double priceUsd,
            double costUsd,
            double labourHours,
            double crewDays,
            double glassLostFraction,
            double anyLeak,
            double expectedDamageUsd,
            double horizonCostUsd,
            double grossProfitUsd,
            double grossProfitPerCrewDayUsd,
            double planHorizonCostUsd,
            int overLimit) {}

    /**
     * The families' plans, means over the houses.
     *
     * @param anyLeak chance of leak damage at any opening of a house, 0 to 1
     * @param mixed houses that get more than one method
     * @param single houses that limits leave one plan, whatever the default
     * @param atRisk houses that no plan brings under the family's limit of leak damage
     */
    public record FamilyPlans(double priceUsd, double anyLeak, double horizonCostUsd, int mixed, int single, int atRisk)
            implements Serializable {
        private FamilyPlans plus(FamilyPlans other) {
            return new FamilyPlans(
                    priceUsd + other.priceUsd,
                    anyLeak + other.anyLeak,
                    horizonCostUsd + other.horizonCostUsd,
                    mixed + other.mixed,
                    single + other.single,
                    atRisk + other.atRisk);
        }
    }

    public PerHouse of(Method method) {
        return methods.get(method);
    }

    /** Adds up while a portfolio is walked through. */
    static final class Sum implements Serializable {
        private final double[] differenceUsd;
        private final MethodSum first = new MethodSum();
        private final MethodSum second = new MethodSum();
        private Contrast contrast = Contrast.USUAL;
        private int standIns;
        private int houses;
        private int openings;
        private FamilyPlans plans = new FamilyPlans(0, 0, 0, 0, 0, 0);

        /** @param draws of every house to come */
        Sum(int draws) {
            differenceUsd = new double[draws];
        }

        /** Takes a house in. */
        void add(HouseChoice choice) {
            HouseResult house = choice.result();
            houses++;
            openings += house.house().openingCount();
            double[] ofHouseUsd = choice.horizonDifferenceUsd();
            for (int d = 0; d < differenceUsd.length; d++) {
                differenceUsd[d] += ofHouseUsd[d];
            }
            contrast = house.named();
            standIns += house.contrast().equals(contrast) ? 0 : 1;
            boolean onePlan = choice.onePlan();
            first.add(choice, house.contrast().first(), onePlan);
            second.add(choice, house.contrast().second(), onePlan);
            plans = plans.plus(of(choice, onePlan));
        }

        /** Takes in other houses of as many draws, which come after these. */
        void add(Sum other) {
            if (other.differenceUsd.length != differenceUsd.length) {
                throw new IllegalArgumentException("sums of " + other.differenceUsd.length + " runs and of "
                        + differenceUsd.length + " do not go together");
            }
            for (int d = 0; d < differenceUsd.length; d++) {
                differenceUsd[d] += other.differenceUsd[d];
            }
            if (other.houses > 0) {
                contrast = other.contrast;
            }
            standIns += other.standIns;
            houses += other.houses;
            openings += other.openings;
            first.add(other.first);
            second.add(other.second);
            plans = plans.plus(other.plans);
        }

        private static FamilyPlans of(HouseChoice choice, boolean onePlan) {
            Plan family = choice.family();
            return new FamilyPlans(
                    family.priceUsd(),
                    family.leakProbability(),
                    family.horizonCostUsd(),
                    family.methods().size() > 1 ? 1 : 0,
                    onePlan ? 1 : 0,
                    choice.atRisk() ? 1 : 0);
        }

        /** @throws IllegalArgumentException if no house was taken in */
        Answer answer() {
            if (houses == 0) {
                throw new IllegalArgumentException("The portfolio must hold a house.");
            }
            Map<Method, PerHouse> perHouse = new EnumMap<>(Method.class);
            perHouse.put(contrast.first(), first.perHouse(houses));
            perHouse.put(contrast.second(), second.perHouse(houses));
            double gapUsd = perHouse.get(contrast.first()).planHorizonCostUsd()
                    - perHouse.get(contrast.second()).planHorizonCostUsd();
            Method cheaper = contrast.cheaper(gapUsd);
            double sign = cheaper == contrast.first() ? -1 : 1;
            double[] saved =
                    Arrays.stream(differenceUsd).map(usd -> sign * usd / houses).toArray();
            MethodSum own = cheaper == contrast.first() ? first : second;
            MethodSum other = own == first ? second : first;
            return new Answer(
                    contrast,
                    standIns,
                    cheaper,
                    Summary.of(sign * gapUsd, saved),
                    (double) Arrays.stream(saved).filter(usd -> usd > 0).count() / saved.length,
                    own.chosen,
                    own.savedWhereChosenUsd,
                    other.chosen,
                    other.savedWhereChosenUsd,
                    other.heldBack,
                    houses,
                    openings,
                    perHouse,
                    new FamilyPlans(
                            plans.priceUsd / houses,
                            plans.anyLeak / houses,
                            plans.horizonCostUsd / houses,
                            plans.mixed,
                            plans.single,
                            plans.atRisk));
        }
    }

    /** Sums of one method over houses. */
    private static final class MethodSum implements Serializable {
        private final double[] sums = new double[9];
        private double glass;
        private double glassToday;
        private int chosen;
        private double savedWhereChosenUsd;
        private int heldBack;
        private int overLimit;

        void add(HouseChoice choice, Method method, boolean onePlan) {
            MethodResult result = choice.result().method(method);
            glass += result.glassFt2();
            glassToday += result.glassExistingFt2();
            double[] values = {
                result.priceUsd(),
                result.costUsd().mean(),
                result.labourHours().mean(),
                result.crewDays(),
                result.leakProbability(),
                result.expectedDamageUsd(),
                result.horizonCostUsd().mean(),
                result.grossProfitUsd(),
                choice.wherever().get(method).horizonCostUsd()
            };
            for (int i = 0; i < values.length; i++) {
                sums[i] += values[i];
            }
            overLimit += choice.overLimit().contains(method) ? 1 : 0;
            if (choice.familyMethod() == method && !onePlan) {
                chosen++;
                savedWhereChosenUsd += Math.abs(choice.differenceUsd());
            } else if (choice.result().preferred() == method) {
                heldBack++;
            }
        }

        void add(MethodSum other) {
            for (int i = 0; i < sums.length; i++) {
                sums[i] += other.sums[i];
            }
            glass += other.glass;
            glassToday += other.glassToday;
            chosen += other.chosen;
            savedWhereChosenUsd += other.savedWhereChosenUsd;
            heldBack += other.heldBack;
            overLimit += other.overLimit;
        }

        PerHouse perHouse(int n) {
            return new PerHouse(
                    sums[0] / n,
                    sums[1] / n,
                    sums[2] / n,
                    sums[3] / n,
                    glassToday == 0 ? 0 : (glassToday - glass) / glassToday,
                    sums[4] / n,
                    sums[5] / n,
                    sums[6] / n,
                    sums[7] / n,
                    sums[3] == 0 ? 0 : sums[7] / sums[3],
                    sums[8] / n,
                    overLimit);
        }
    }
}
