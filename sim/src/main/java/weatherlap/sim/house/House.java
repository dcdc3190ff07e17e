package weatherlap.sim.house;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.sim.Check;

/**
 * One house that stands.
 *
 * @param id key, unique in a portfolio
 * @param label what people call it; untrusted text
 * @param yearBuilt calendar year, 1700 or later
 * @param terrain upwind roughness
 * @param cladding outside
 * @param barrier behind the cladding
 * @param storeys 1 to 4
 * @param region looks up wages and climate; empty: the scenario's
 * @param leadTest of the old paint
 * @param elevations its walls, in table order
 * @param job what the crew is told of the house, by column, as somebody wrote it; untrusted text
 */
public record House(
        String id,
        String label,
        int yearBuilt,
        Terrain terrain,
        Cladding cladding,
        Barrier barrier,
        int storeys,
        Optional<String> region,
        LeadTest leadTest,
        List<Elevation> elevations,
        Map<String, String> job) {
    /**
     * Houses built before it are presumed to hold lead paint. A federal rule, and no assumption of a shop's that a setting could turn off.
     *
     * @see "40 CFR 745.82 and 745.83 (US EPA renovation, repair and painting rule)"
     */
    public static final int LEAD_UNTIL_YEAR = 1978;

    public House {
        Check.text("house id", id);
        Check.within("year built", yearBuilt, 1700, 2200);
        Check.within("storeys", storeys, 1, 4);
        elevations = List.copyOf(elevations);
        job = Collections.unmodifiableMap(new LinkedHashMap<>(job));
    }

    /** A house of which the crew is told nothing besides. */
    public House(
            String id,
            String label,
            int yearBuilt,
            Terrain terrain,
            Cladding cladding,
            Barrier barrier,
            int storeys,
            Optional<String> region,
            LeadTest leadTest,
            List<Elevation> elevations) {
        this(id, label, yearBuilt, terrain, cladding, barrier, storeys, region, leadTest, elevations, Map.of());
    }

    /** All openings, in table order of their elevations. */
    public Stream<Opening> openings() {
        return elevations.stream().flatMap(e -> e.openings().stream());
    }

    public int openingCount() {
        int count = 0;
        for (Elevation wall : elevations) {
            count += wall.openings().size();
        }
        return count;
    }

    /** The same with no more than its first openings, in table order; all walls stay. */
    public House withFirst(int openings) {
        if (openings >= openingCount()) {
            return this;
        }
        List<Elevation> walls = new ArrayList<>();
        int left = openings;
        for (Elevation wall : elevations) {
            List<Opening> kept =
                    wall.openings().subList(0, Math.min(left, wall.openings().size()));
            walls.add(wall.with(kept));
            left -= kept.size();
        }
        return new House(id, label, yearBuilt, terrain, cladding, barrier, storeys, region, leadTest, walls, job);
    }

    /** Whether it was built before {@link #LEAD_UNTIL_YEAR}. */
    public boolean builtWithLead() {
        return yearBuilt < LEAD_UNTIL_YEAR;
    }

    /** Whether lead-safe work is presumed: built before {@link #LEAD_UNTIL_YEAR} and not tested negative. */
    public boolean leadSafe() {
        return builtWithLead() && leadTest != LeadTest.NEGATIVE;
    }

    /**
     * The storey an opening stands in, from 1: the one that holds its middle, storeys being equally high under the eave of its wall.
     */
    public int storeyOf(Elevation elevation, Opening opening) {
        double middleIn = opening.place().sillHeightIn() + opening.frame().heightIn() / 2;
        double storeyHeightIn = elevation.eaveHeightIn() / storeys;
        return Math.max(1, Math.min(storeys, 1 + (int) (middleIn / storeyHeightIn)));
    }
}
