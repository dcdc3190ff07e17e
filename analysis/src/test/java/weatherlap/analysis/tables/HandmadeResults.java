package weatherlap.analysis.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
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

/** Results made by hand, with numbers small enough to add up in the head. */
final class HandmadeResults {
    private HandmadeResults() {}

    /** Houses of one wall each and as many draws as the first, for a family that minds no risk. */
    static Comparison compared(SimulatedHouse... houses) {
        Comparison.Sum sum = new Comparison.Sum(houses[0].parts().repair().length, houses.length);
        Stream.of(houses).map(house -> HouseChoice.of(house, 1)).forEach(sum::add);
        return sum.comparison();
    }

    /**
     * A house with one wall and one opening of 10 ft² of glass, of which full-flange takes 1 and an insert 2.
     *
     * @param difference horizon cost, full-flange less insert, by draw; an insert costs 10 000 in each
     */
    static SimulatedHouse house(String id, Cladding cladding, double bearingDeg, double... difference) {
        double mean = Arrays.stream(difference).average().orElseThrow();
        Map<Method, MethodResult> methods = new EnumMap<>(Method.class);
        House house = madeHouse(id, cladding, bearingDeg);
        Elevation wall = house.elevations().get(0);
        List<ElevationResult> walls = new ArrayList<>();
        List<OpeningResult> openings = new ArrayList<>();
        for (Method method : Contrast.USUAL.at(cladding).both()) {
            boolean full = method != Method.INSERT;
            double horizon = full ? 10_000 + mean : 10_000;
            methods.put(method, method(method, horizon));
            walls.add(new ElevationResult(wall, method, full ? 6 : 0, 50, full ? 4 : 12, full ? 300 : 150, horizon));
            openings.add(opening(wall, method));
        }
        return new SimulatedHouse(
                new HouseResult(house, methods, difference, walls, openings), parts(house, difference), Map.of());
    }

    /** What full-flange costs more than in its cheapest draw is damage. */
    private static PlanParts parts(House house, double... difference) {
        double least = Arrays.stream(difference).min().orElseThrow();
        double damage = Arrays.stream(difference).average().orElseThrow() - least;
        double[] dry =
                Arrays.stream(difference).map(usd -> 1 - (usd - least) / 1e6).toArray();
        double[] ones = new double[difference.length];
        Arrays.fill(ones, 1);
        Elevation wall = house.elevations().get(0);
        return new PlanParts(
                house,
                List.of(new PlanParts.Wall(
                        wall,
                        new double[1 << Method.values().length],
                        new double[1 << Method.values().length],
                        List.of(new Part(
                                wall.openings().get(0),
                                new BitSet(),
                                List.of(
                                        new Way(
                                                Contrast.USUAL
                                                        .at(house.cladding())
                                                        .first(),
                                                10_000 + least,
                                                damage,
                                                0,
                                                dry,
                                                List.of()),
                                        new Way(Method.INSERT, 10_000, 0, 0, ones, List.of())))))),
                new double[1 << Method.values().length],
                ones);
    }

    private static House madeHouse(String id, Cladding cladding, double bearingDeg) {
        return MadeHouse.of(id, wall(bearingDeg)).built(1985).clad(cladding).house();
    }

    private static Elevation wall(double bearingDeg) {
        return MadeWall.of("w1", MadeOpening.of("o1").at(24, 30).opening())
                .facing(bearingDeg)
                .courses(8, 144)
                .wall();
    }

    private static OpeningResult opening(Elevation wall, Method method) {
        boolean full = method != Method.INSERT;
        return new OpeningResult(
                wall,
                wall.openings().get(0),
                method,
                10,
                full ? 9 : 8,
                33,
                27,
                6.2,
                full ? List.of() : List.of("egress"),
                35.5,
                59.5,
                exactly(full ? 300 : 150),
                exactly(400),
                full ? 2000 : 1000,
                new OpeningExposure(60, 50, 1 - 50.0 / 60, Map.of(Joint.HEAD, 1.0), 0.2, 20),
                0.1,
                exactly(full ? 4 : 12),
                List.of(new OpeningResult.LeakCause("f1", "reversed head flap", full ? 0.04 : 0.12)));
    }

    private static MethodResult method(Method method, double horizon) {
        boolean full = method != Method.INSERT;
        return new MethodResult(
                method,
                10,
                full ? 9 : 8,
                exactly(full ? 8 : 4),
                Map.of("set", full ? 300.0 : 150.0),
                full ? 2 : 1,
                exactly(500),
                full ? 2000 : 1000,
                full ? 200 : 100,
                exactly(full ? 1200 : 700),
                Map.of("labour", full ? 700.0 : 200.0, "material", 500.0),
                full ? 900 : 450,
                0.01,
                exactly(full ? 4 : 12),
                full ? 100 : 300,
                full ? 50 : 100,
                exactly(horizon),
                full ? List.of() : List.of("rotten_frame"));
    }

    private static Summary exactly(double value) {
        return new Summary(value, value, value, value);
    }
}
