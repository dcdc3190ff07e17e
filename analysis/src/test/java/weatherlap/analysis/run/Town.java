package weatherlap.analysis.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.InteriorReturn;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Room;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.house.Terrain;
import weatherlap.sim.rain.RainClimate;

/** Invented houses for tests of the whole simulation on the bundled tables. */
final class Town {
    static final Assumptions BUNDLED = AssumptionTables.bundled().assumptions();
    static final RainClimate CLIMATE = RainClimate.of(DemoClimate.hourly(), BUNDLED.scenario());

    private Town() {}

    /** Two storeys, vinyl over housewrap of the nineties, one bare and one sheltered wall with two windows each. */
    static House house(String id) {
        return house(id, Lap.UNKNOWN, 0, 24);
    }

    static House house(String id, Lap laps, double weatherOverhangIn, double leeOverhangIn) {
        return new House(
                id,
                "the blue one",
                1994,
                Terrain.SUBURBAN,
                Cladding.VINYL_SIDING,
                Barrier.HOUSEWRAP,
                2,
                Optional.empty(),
                LeadTest.UNKNOWN,
                List.of(wall("weather", 180, weatherOverhangIn, laps), wall("lee", 0, leeOverhangIn, laps)));
    }

    /** One storey, the windows right under a porch of eight feet on every side. */
    static House porch(String id, Lap laps) {
        return low(id, laps, 96);
    }

    /** One storey, one window a wall, right under the eave. */
    static House low(String id, Lap laps, double overhangIn) {
        House deep = house(id, laps, overhangIn, overhangIn);
        List<Elevation> walls = deep.elevations().stream()
                .map(e -> new Elevation(
                        e.id(),
                        e.bearingDeg(),
                        e.widthFt(),
                        9,
                        e.overhangIn(),
                        e.courseExposureIn(),
                        e.panelLengthIn(),
                        e.sidingCondition(),
                        e.obstructionM(),
                        e.openings().subList(0, 1)))
                .toList();
        return new House(
                id,
                deep.label(),
                deep.yearBuilt(),
                deep.terrain(),
                deep.cladding(),
                deep.barrier(),
                1,
                deep.region(),
                deep.leadTest(),
                walls);
    }

    /** The same house of another year, wall and old units, all laps seen alike. */
    static House like(House house, int year, Cladding cladding, Barrier barrier, FrameMaterial material, Lap laps) {
        return house(house, year, cladding, barrier, o -> opening(o, material, laps, laps, laps, o.stain()));
    }

    /** The same house of another year and wall with each opening changed. */
    static House house(House h, int year, Cladding cladding, Barrier barrier, UnaryOperator<Opening> change) {
        List<Elevation> walls = h.elevations().stream()
                .map(e -> new Elevation(
                        e.id(),
                        e.bearingDeg(),
                        e.widthFt(),
                        e.eaveHeightFt(),
                        e.overhangIn(),
                        e.courseExposureIn(),
                        e.panelLengthIn(),
                        e.sidingCondition(),
                        e.obstructionM(),
                        e.openings().stream().map(change).toList()))
                .toList();
        return new House(
                h.id(), h.label(), year, h.terrain(), cladding, barrier, h.storeys(), h.region(), h.leadTest(), walls);
    }

    static Opening opening(Opening o, FrameMaterial material, Lap head, Lap jamb, Lap sill, Sighting stain) {
        return new Opening(
                o.id(),
                o.room(),
                o.operation(),
                o.newOperation(),
                o.units(),
                o.frameWidthIn(),
                o.frameHeightIn(),
                o.leftIn(),
                o.sillHeightIn(),
                o.interiorSillIn(),
                o.floorAreaFt2(),
                material,
                o.frameCondition(),
                o.interiorReturn(),
                o.returnLayers(),
                o.setbackIn(),
                head,
                jamb,
                sill,
                stain,
                o.readings());
    }

    /** A window in the middle of each story of nine feet, as many on each wall as there are stories. */
    static House tall(int stories, double overhangIn) {
        House house = house("H1", Lap.UNKNOWN, overhangIn, overhangIn);
        List<Opening> windows = IntStream.range(0, stories)
                .mapToObj(story ->
                        window(Integer.toString(story), Operation.DOUBLE_HUNG, 60, 36 + 108 * story, Lap.UNKNOWN))
                .toList();
        List<Elevation> walls = house.elevations().stream()
                .map(e -> new Elevation(
                        e.id(),
                        e.bearingDeg(),
                        e.widthFt(),
                        9 * stories,
                        e.overhangIn(),
                        e.courseExposureIn(),
                        e.panelLengthIn(),
                        e.sidingCondition(),
                        e.obstructionM(),
                        windows))
                .toList();
        return new House(
                house.id(),
                house.label(),
                house.yearBuilt(),
                house.terrain(),
                house.cladding(),
                house.barrier(),
                stories,
                house.region(),
                house.leadTest(),
                walls);
    }

    private static Elevation wall(String id, double bearingDeg, double overhangIn, Lap laps) {
        return new Elevation(
                id,
                bearingDeg,
                30,
                18,
                overhangIn,
                OptionalDouble.of(8),
                OptionalDouble.of(150),
                SidingCondition.SOUND,
                OptionalDouble.empty(),
                List.of(
                        window("1", Operation.DOUBLE_HUNG, 60, 36, laps),
                        window("2", Operation.SINGLE_HUNG, 200, 140, laps)));
    }

    static Opening window(String id, Operation operation, double leftIn, double sillIn, Lap laps) {
        return new Opening(
                id,
                Room.BEDROOM,
                operation,
                Operation.DOUBLE_HUNG,
                1,
                32,
                54,
                leftIn,
                sillIn,
                OptionalDouble.of(30),
                OptionalDouble.of(120),
                FrameMaterial.ALUMINUM,
                FrameCondition.SOUND,
                InteriorReturn.DRYWALL,
                2,
                OptionalDouble.empty(),
                laps,
                laps,
                laps,
                Sighting.UNKNOWN,
                Optional.empty());
    }
}
