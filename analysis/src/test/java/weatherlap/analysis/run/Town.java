package weatherlap.analysis.run;

import java.util.List;
import java.util.stream.IntStream;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Room;
import weatherlap.sim.made.MadeHouse;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.made.MadeWall;
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
        return MadeHouse.of(id, wall("weather", 180, weatherOverhangIn, laps), wall("lee", 0, leeOverhangIn, laps))
                .label("the blue one")
                .built(1994)
                .storeys(2)
                .house();
    }

    /** One storey, the windows right under a porch of eight feet on every side. */
    static House porch(String id, Lap laps) {
        return low(id, laps, 96);
    }

    /** One storey, one window a wall, right under the eave. */
    static House low(String id, Lap laps, double overhangIn) {
        return MadeHouse.like(house(id, laps, overhangIn, overhangIn))
                .storeys(1)
                .eachWall(wall -> wall.size(30, 9).first(1))
                .house();
    }

    /** The same house of another year, wall and old units, all laps seen alike. */
    static House like(House house, int year, Cladding cladding, Barrier barrier, FrameMaterial material, Lap laps) {
        return MadeHouse.like(house)
                .built(year)
                .clad(cladding)
                .over(barrier)
                .eachOpening(opening -> opening.of(material).laps(laps))
                .house();
    }

    /** A window in the middle of each story of nine feet, as many on each wall as there are stories. */
    static House tall(int stories, double overhangIn) {
        List<Opening> windows = IntStream.range(0, stories)
                .mapToObj(story ->
                        window(Integer.toString(story), Operation.DOUBLE_HUNG, 60, 36 + 108 * story, Lap.UNKNOWN))
                .toList();
        return MadeHouse.like(house("H1", Lap.UNKNOWN, overhangIn, overhangIn))
                .storeys(stories)
                .eachWall(wall -> wall.size(30, 9 * stories).openings(windows))
                .house();
    }

    private static Elevation wall(String id, double bearingDeg, double overhangIn, Lap laps) {
        return MadeWall.of(
                        id,
                        window("1", Operation.DOUBLE_HUNG, 60, 36, laps),
                        window("2", Operation.SINGLE_HUNG, 200, 140, laps))
                .facing(bearingDeg)
                .size(30, 18)
                .under(overhangIn)
                .courses(8, 150)
                .wall();
    }

    private static Opening window(String id, Operation operation, double leftIn, double sillIn, Lap laps) {
        return MadeOpening.of(id)
                .opens(operation, Operation.DOUBLE_HUNG)
                .size(32, 54)
                .at(leftIn, sillIn)
                .in(Room.BEDROOM, 30, 120)
                .layers(2)
                .laps(laps)
                .opening();
    }
}
