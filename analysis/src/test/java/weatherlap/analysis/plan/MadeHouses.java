package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Room;
import weatherlap.sim.made.MadeHouse;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.made.MadeWall;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.OpeningExposure;
import weatherlap.sim.run.ElevationResult;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Way;
import weatherlap.sim.run.SimulatedHouse;
import weatherlap.sim.run.Summary;

/**
 * Houses with one window a wall whose costs are written down, not simulated: the set-up of the full flange is 60 USD, that of the insert 40.
 * All invented.
 */
public final class MadeHouses {
    private static final Terms DRY = new Terms(0, 0);

    private MadeHouses() {}

    /**
     * One wall.
     *
     * @param flangeUsd horizon cost with the full flange
     * @param insertUsd likewise with the insert
     * @param flags of the insert's code checks
     */
    public record Wall(
            double overhangIn, double flangeUsd, double insertUsd, FrameCondition frame, List<String> flags) {
        public static Wall sound(double overhangIn, double flangeUsd, double insertUsd) {
            return new Wall(overhangIn, flangeUsd, insertUsd, FrameCondition.SOUND, List.of());
        }
    }

    /** What a method does to a house beside its cost. */
    public record Terms(double leakPercent, double grossProfitUsd) {}

    /** A house of one storey; with the full flange at the first wall it costs 10 less and 10 more than its mean in its two draws. */
    public static SimulatedHouse house(String id, Terms flange, Terms insert, Wall... walls) {
        List<Elevation> elevations = new ArrayList<>();
        List<ElevationResult> wallResults = new ArrayList<>();
        List<OpeningResult> openings = new ArrayList<>();
        Map<Method, Double> cost = new EnumMap<>(Method.class);
        for (int w = 0; w < walls.length; w++) {
            String wall = "w" + w;
            Elevation elevation = elevation(wall, 90 * w, walls[w]);
            elevations.add(elevation);
            for (Method method : Contrast.USUAL.both()) {
                double usd = method == Method.FULL_FLANGE ? walls[w].flangeUsd : walls[w].insertUsd;
                cost.merge(method, usd, Double::sum);
                wallResults.add(new ElevationResult(elevation, method, 0, 100, 0, 60, usd));
                openings.add(opening(elevation, method, method == Method.INSERT ? walls[w].flags : List.of()));
            }
        }
        Map<Method, MethodResult> methods = new EnumMap<>(Method.class);
        methods.put(Method.FULL_FLANGE, method(Method.FULL_FLANGE, flange, cost.get(Method.FULL_FLANGE)));
        methods.put(Method.INSERT, method(Method.INSERT, insert, cost.get(Method.INSERT)));
        double difference = cost.get(Method.FULL_FLANGE) - cost.get(Method.INSERT);
        House house = MadeHouse.of(id, elevations).lead(LeadTest.NEGATIVE).house();
        return new SimulatedHouse(
                new HouseResult(house, methods, new double[] {difference - 10, difference + 10}, wallResults, openings),
                parts(house, flange, insert, cost, walls),
                Map.of());
    }

    /** Every wall bears the part of a method's set-up that its cost is of the house's; the first wall has all of the risk. */
    private static PlanParts parts(House house, Terms flange, Terms insert, Map<Method, Double> cost, Wall... walls) {
        List<PlanParts.Wall> parts = new ArrayList<>();
        for (int w = 0; w < walls.length; w++) {
            Elevation elevation = house.elevations().get(w);
            double full = walls[w].flangeUsd * (1 - 60 / cost.get(Method.FULL_FLANGE));
            double small = walls[w].insertUsd * (1 - 40 / cost.get(Method.INSERT));
            double damage = w == 0 ? 10 : 0;
            parts.add(new PlanParts.Wall(
                    elevation,
                    new double[1 << Method.values().length],
                    new double[1 << Method.values().length],
                    List.of(new Part(
                            elevation.openings().get(0),
                            new BitSet(),
                            List.of(
                                    way(Method.FULL_FLANGE, full - damage, damage, w == 0 ? flange : DRY, List.of()),
                                    way(Method.INSERT, small, 0, w == 0 ? insert : DRY, walls[w].flags))))));
        }
        return new PlanParts(house, parts, setups(), new double[] {0, 2});
    }

    /** 60 USD for full-flange, 40 for an insert, by set of methods. */
    private static double[] setups() {
        double[] usd = new double[1 << Method.values().length];
        usd[PlanParts.mask(Set.of(Method.FULL_FLANGE))] = 60;
        usd[PlanParts.mask(Set.of(Method.INSERT))] = 40;
        usd[PlanParts.mask(Set.of(Method.FULL_FLANGE, Method.INSERT))] = 100;
        return usd;
    }

    private static Way way(Method method, double priceUsd, double damageUsd, Terms terms, List<String> flags) {
        double dry = 1 - terms.leakPercent / 100;
        return new Way(method, priceUsd, damageUsd, 0, new double[] {dry, dry}, flags);
    }

    private static Elevation elevation(String id, double bearingDeg, Wall wall) {
        Opening opening = MadeOpening.of("o")
                .in(Room.BEDROOM)
                .size(36, 54)
                .of(FrameMaterial.WOOD)
                .frame(wall.frame)
                .at(60, 36)
                .opening();
        return MadeWall.of(id, opening)
                .facing(bearingDeg)
                .size(24, 9)
                .under(wall.overhangIn)
                .wall();
    }

    private static OpeningResult opening(Elevation wall, Method method, List<String> flags) {
        Summary none = new Summary(0, 0, 0, 0);
        OpeningExposure dry = new OpeningExposure(0, 0, 0, Map.of(Joint.HEAD, 0.0), 0, 0);
        return new OpeningResult(
                wall,
                wall.openings().get(0),
                method,
                10,
                9,
                30,
                24,
                5,
                flags,
                35,
                53,
                none,
                none,
                100,
                dry,
                0,
                none,
                List.of());
    }

    private static MethodResult method(Method method, Terms terms, double horizonUsd) {
        Summary none = new Summary(0, 0, 0, 0);
        double[] leak = {terms.leakPercent};
        double[] horizon = {horizonUsd};
        return new MethodResult(
                method,
                20,
                18,
                none,
                Map.of(),
                1,
                none,
                1000,
                method == Method.FULL_FLANGE ? 60 : 40,
                none,
                Map.of(),
                terms.grossProfitUsd,
                0,
                Summary.of(leak),
                0,
                0,
                Summary.of(Arrays.stream(horizon).sum(), horizon),
                List.of());
    }
}
