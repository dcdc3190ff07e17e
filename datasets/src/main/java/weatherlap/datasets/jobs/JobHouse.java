package weatherlap.datasets.jobs;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Inside;
import weatherlap.sim.house.InteriorReturn;
import weatherlap.sim.house.Laps;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.OldFrame;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Place;
import weatherlap.sim.house.Room;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.house.Terrain;

/**
 * The house that stands for those of which a job record keeps a few facts: a wall to each quarter, 12 in. of eave, a window of 36 × 60 in. on
 * each story of each wall (judgement: records seldom say which way a window faces). A barrier that was not kept is unknown; other facts
 * are those of an ordinary job. Years count in steps of five, so that few houses stand for many jobs.
 */
public final class JobHouse {
    private static final int YEARS = 5;
    private static final double STOREY_FT = 9;
    private static final List<Fact> KEPT =
            List.of(Fact.CLADDING, Fact.STOREYS, Fact.YEAR_BUILT, Fact.OPERATION, Fact.UNITS, Fact.EXISTING_MATERIAL);

    private JobHouse() {}

    /** The facts of a job that its house is made from; jobs of equal facts have equal houses. */
    public static Map<Fact, String> facts(JobRecord job) {
        Map<Fact, String> facts = new EnumMap<>(Fact.class);
        Map<Fact, String> all = JobWork.facts(job);
        KEPT.forEach(fact -> facts.put(fact, all.get(fact)));
        facts.put(Fact.BARRIER, job.facts().getOrDefault(Fact.BARRIER, "unknown"));
        int year = Integer.parseInt(facts.get(Fact.YEAR_BUILT));
        facts.put(Fact.YEAR_BUILT, Integer.toString(year - Math.floorMod(year, YEARS)));
        return facts;
    }

    /** The house of such facts. */
    public static House of(Map<Fact, String> facts) {
        int storeys = Integer.parseInt(facts.get(Fact.STOREYS));
        Cladding cladding = word(facts, Fact.CLADDING, Cladding.class);
        List<Elevation> walls = new ArrayList<>();
        for (int quarter = 0; quarter < 4; quarter++) {
            walls.add(wall(quarter, storeys, cladding, facts));
        }
        return new House(
                "job",
                "house of a job",
                Integer.parseInt(facts.get(Fact.YEAR_BUILT)),
                Terrain.SUBURBAN,
                cladding,
                word(facts, Fact.BARRIER, Barrier.class),
                storeys,
                Optional.empty(),
                LeadTest.UNKNOWN,
                walls);
    }

    private static Elevation wall(int quarter, int storeys, Cladding cladding, Map<Fact, String> facts) {
        List<Opening> openings = new ArrayList<>();
        for (int storey = 0; storey < storeys; storey++) {
            openings.add(opening(storey, facts));
        }
        return new Elevation(
                "wall" + quarter,
                90.0 * quarter,
                30,
                STOREY_FT * storeys,
                12,
                cladding.inCourses() ? OptionalDouble.of(8) : OptionalDouble.empty(),
                cladding.inCourses() ? OptionalDouble.of(150) : OptionalDouble.empty(),
                SidingCondition.SOUND,
                OptionalDouble.empty(),
                openings);
    }

    private static Opening opening(int storey, Map<Fact, String> facts) {
        Operation operation = word(facts, Fact.OPERATION, Operation.class);
        int units = Integer.parseInt(facts.get(Fact.UNITS));
        FrameMaterial material = word(facts, Fact.EXISTING_MATERIAL, FrameMaterial.class);
        return new Opening(
                "W" + storey,
                operation,
                operation,
                units,
                new OldFrame(36.0 * units, 60, material, FrameCondition.SOUND),
                new Place(
                        96,
                        30 + 12 * STOREY_FT * storey,
                        Room.LIVING,
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                new Inside(InteriorReturn.DRYWALL, 1, OptionalDouble.empty()),
                Laps.UNSEEN,
                Optional.empty(),
                Map.of());
    }

    private static <E extends Enum<E>> E word(Map<Fact, String> facts, Fact fact, Class<E> type) {
        return Enum.valueOf(type, facts.get(fact).toUpperCase(Locale.ROOT));
    }
}
