package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.geometry.SidingPlan;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.material.MaterialLine;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobCost;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;
import weatherlap.sim.work.WorkTakeoff;

/** Takes the price of a house under each method apart, into the {@link PlanParts} of any plan. */
final class PlanPricing {
    private final Map<Method, MethodPrice> prices = new EnumMap<>(Method.class);
    private final Map<Method, MethodDraws> drawn;
    private final HouseTakeoff any;
    private final double glassWorthUsdPerFt2;
    private final double meanRepairUsd;

    private PlanPricing(Map<Method, MethodDraws> drawn, Scenario scenario, World world) {
        this.drawn = drawn;
        any = drawn.values().iterator().next().takeoff();
        glassWorthUsdPerFt2 = HouseSummary.glassWorthUsdPerFt2(scenario);
        meanRepairUsd = world.meanRepairUsd();
        drawn.forEach((method, draws) ->
                prices.put(method, MethodPrice.of(method, draws.takeoff().work(), draws.pricing())));
    }

    static PlanParts of(Map<Method, MethodDraws> drawn, Scenario scenario, World world) {
        PlanPricing pricing = new PlanPricing(drawn, scenario, world);
        List<Wall> walls = new ArrayList<>();
        int first = 0;
        for (int e = 0; e < pricing.any.house().elevations().size(); e++) {
            int openings = pricing.any.house().elevations().get(e).openings().size();
            if (openings > 0) {
                walls.add(pricing.wall(e, first));
            }
            first += openings;
        }
        double[] repair = Arrays.stream(world.repairUsd())
                .map(usd -> usd / world.meanRepairUsd())
                .toArray();
        return new PlanParts(pricing.any.house(), walls, pricing.bySet(MethodPrice::setup), repair);
    }

    private Wall wall(int e, int first) {
        Elevation elevation = any.house().elevations().get(e);
        List<Part> parts = new ArrayList<>();
        for (int o = 0; o < elevation.openings().size(); o++) {
            int at = first + o;
            parts.add(new Part(
                    elevation.openings().get(o),
                    SidingPlan.panels(
                            any.house(), elevation, elevation.openings().get(o)),
                    drawn.keySet().stream().map(method -> way(method, at)).toList()));
        }
        return new Wall(
                elevation,
                bySet(price -> price.fixed(e)),
                bySet(price -> price.perPanel(
                        e, drawn.get(price.method()).takeoff().panelsDown().get(e))),
                parts);
    }

    private Way way(Method method, int o) {
        MethodDraws draws = drawn.get(method);
        var geometry = draws.takeoff().openings().get(o).geometry();
        return new Way(
                method,
                prices.get(method).opening(o)
                        + prices.get(method).warranty(draws.openingWarranted()[o] * meanRepairUsd),
                draws.openingDamageUsd()[o],
                geometry.glassLostFt2() * glassWorthUsdPerFt2,
                Arrays.stream(draws.leak()[o]).map(chance -> 1 - chance).toArray(),
                draws.takeoff().openings().get(o).codeFlags());
    }

    /** By set of methods: each key once, at its dearest. */
    private double[] bySet(Function<MethodPrice, Map<String, Double>> priced) {
        Map<Method, Map<String, Double>> each = new EnumMap<>(Method.class);
        prices.forEach((method, price) -> each.put(method, priced.apply(price)));
        double[] usd = new double[1 << Method.values().length];
        for (int set = 0; set < usd.length; set++) {
            Map<String, Double> all = new HashMap<>();
            for (Map.Entry<Method, Map<String, Double>> one : each.entrySet()) {
                if ((set >> one.getKey().ordinal() & 1) == 1) {
                    one.getValue().forEach((key, value) -> all.merge(key, value, Math::max));
                }
            }
            usd[set] = all.values().stream().mapToDouble(value -> value).sum();
        }
        return usd;
    }

    /**
     * How one method's work turns into price.
     *
     * @param perMinuteUsd price of a person-minute, the working days and the way to the house spread over it
     * @param perUsd price of a dollar of material
     */
    private record MethodPrice(Method method, WorkTakeoff work, double perMinuteUsd, double perUsd) {
        static MethodPrice of(Method method, WorkTakeoff work, Pricing pricing) {
            int crew = work.weights().crewSize();
            double hour = Units.minutesToHours(1);
            double perMinute =
                    pricing.priceUsd(new JobCost(hour * work.personHour().value(), 0, 0, hour / crew));
            double perUsd = pricing.priceUsd(new JobCost(0, 1, 0, 0));
            double dayMinutes =
                    LabourLine.meanMinutes(work.dayLines()) + work.travel().value();
            double dayUsd = work.materials().stream()
                    .filter(line -> line.item().driver() == Driver.DAY)
                    .mapToDouble(MaterialLine::houseUsd)
                    .sum();
            double others = work.meanMinutes() - dayMinutes;
            double days = others > 0 ? (dayMinutes * perMinute + dayUsd * perUsd) / others : 0;
            return new MethodPrice(method, work, perMinute + days, perUsd);
        }

        double opening(int o) {
            return work.openings().get(o).meanMinutes() * perMinuteUsd + work.openingMaterialUsd()[o] * perUsd;
        }

        double warranty(double usd) {
            return usd * perUsd;
        }

        Map<String, Double> setup() {
            Map<String, Double> usd = new HashMap<>();
            work.jobLines()
                    .forEach(line ->
                            usd.merge("step " + line.step().id(), line.meanMinutes() * perMinuteUsd, Double::sum));
            for (MaterialLine line : work.materials()) {
                boolean daily = line.item().driver() == Driver.DAY;
                usd.put("item " + line.item().id(), (line.remainderUsd() + (daily ? 0 : line.houseUsd())) * perUsd);
            }
            usd.put("permit", work.weights().houseFixedUsd() * perUsd);
            return usd;
        }

        Map<String, Double> fixed(int e) {
            Map<String, Double> usd = new HashMap<>();
            work.elevations().get(e).lines().stream()
                    .filter(line -> line.step().driver() == Driver.ELEVATION)
                    .forEach(line -> usd.put("step " + line.step().id(), line.meanMinutes() * perMinuteUsd));
            work.materials().stream()
                    .filter(line -> line.item().driver() == Driver.ELEVATION)
                    .forEach(line -> usd.put("item " + line.item().id(), line.wallUsd(e) * perUsd));
            return usd;
        }

        Map<String, Double> perPanel(int e, int panels) {
            Map<String, Double> usd = new HashMap<>();
            if (panels > 0) {
                work.elevations().get(e).lines().stream()
                        .filter(line -> line.step().driver() != Driver.ELEVATION)
                        .forEach(line ->
                                usd.put("step " + line.step().id(), line.meanMinutes() * perMinuteUsd / panels));
                work.materials().stream()
                        .filter(line -> line.item().driver() == Driver.PANEL
                                || line.item().driver() == Driver.BROKEN_PANEL)
                        .forEach(line -> usd.put("item " + line.item().id(), line.wallUsd(e) * perUsd / panels));
            }
            return usd;
        }
    }
}
