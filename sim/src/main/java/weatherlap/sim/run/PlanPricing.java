package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.geometry.SidingPlan;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;
import weatherlap.sim.work.WorkTakeoff;

/**
 * Takes a house under each method apart, into the {@link PlanParts} of any plan.
 *
 * @param each the house by every method
 * @param shares what each method's work is counted in
 * @param ways one opening by one method, by its position in the house
 */
record PlanPricing(Map<Method, HouseTakeoff> each, Map<Method, MethodShares> shares, Ways ways) {
    /** How one opening stands by one method. */
    @FunctionalInterface
    private interface Ways {
        Way of(Method method, int opening);
    }

    /** In dollars. */
    static PlanParts of(Map<Method, MethodDraws> drawn, Scenario scenario, World world) {
        Map<Method, HouseTakeoff> each = new EnumMap<>(Method.class);
        Map<Method, MethodShares> prices = new EnumMap<>(Method.class);
        drawn.forEach((method, draws) -> {
            each.put(method, draws.takeoff());
            prices.put(method, MethodShares.price(method, draws.takeoff().work(), draws.pricing()));
        });
        double glassWorthUsdPerFt2 = HouseSummary.glassWorthUsdPerFt2(scenario);
        double[] repair = world.repairUsd().clone();
        for (int d = 0; d < repair.length; d++) {
            repair[d] /= world.meanRepairUsd();
        }
        return new PlanPricing(each, prices, (method, o) -> {
                    MethodDraws draws = drawn.get(method);
                    var opening = draws.takeoff().openings().get(o);
                    return new Way(
                            method,
                            prices.get(method).opening(o)
                                    + prices.get(method)
                                            .warranty(draws.leaks().means().warranted()[o] * world.meanRepairUsd()),
                            draws.leaks().means().damageUsd()[o],
                            opening.geometry().glassLostFt2() * glassWorthUsdPerFt2,
                            draws.leaks().dry()[o],
                            opening.codeFlags());
                })
                .parts(repair);
    }

    /** In days of the crew, where {@link PlanParts} has dollars of price; there are no draws in it. */
    static PlanParts days(Map<Method, HouseTakeoff> each, BiFunction<Method, WorkTakeoff, MethodShares> counted) {
        Map<Method, MethodShares> days = new EnumMap<>(Method.class);
        each.forEach((method, takeoff) -> days.put(method, counted.apply(method, takeoff.work())));
        return new PlanPricing(
                        each,
                        days,
                        (method, o) -> new Way(method, days.get(method).opening(o), 0, 0, new double[0], List.of()))
                .parts(new double[0]);
    }

    private PlanParts parts(double[] repair) {
        List<Wall> walls = new ArrayList<>();
        int first = 0;
        for (int e = 0; e < house().elevations().size(); e++) {
            int openings = house().elevations().get(e).openings().size();
            if (openings > 0) {
                walls.add(wall(e, first));
            }
            first += openings;
        }
        return new PlanParts(house(), walls, bySet(MethodShares::setup), repair);
    }

    private House house() {
        return each.values().iterator().next().house();
    }

    private Wall wall(int e, int first) {
        Elevation elevation = house().elevations().get(e);
        List<Part> parts = new ArrayList<>();
        for (int o = 0; o < elevation.openings().size(); o++) {
            int at = first + o;
            parts.add(new Part(
                    elevation.openings().get(o),
                    SidingPlan.panels(house(), elevation, elevation.openings().get(o)),
                    Each.of(List.copyOf(each.keySet()), method -> ways.of(method, at))));
        }
        return new Wall(
                elevation,
                bySet(share -> share.fixed(e)),
                bySet(share ->
                        share.perPanel(e, each.get(share.method()).panelsDown().get(e))),
                parts);
    }

    /** By set of methods: each key once, at its dearest. */
    private double[] bySet(Function<MethodShares, Map<String, Double>> shared) {
        Map<Method, Map<String, Double>> byMethod = new EnumMap<>(Method.class);
        shares.forEach((method, share) -> byMethod.put(method, shared.apply(share)));
        double[] sums = new double[1 << Method.values().length];
        for (int set = 0; set < sums.length; set++) {
            Map<String, Double> all = new HashMap<>();
            for (Map.Entry<Method, Map<String, Double>> one : byMethod.entrySet()) {
                if ((set >> one.getKey().ordinal() & 1) == 1) {
                    one.getValue().forEach((key, value) -> all.merge(key, value, Math::max));
                }
            }
            sums[set] = Sum.of(all.values());
        }
        return sums;
    }
}
