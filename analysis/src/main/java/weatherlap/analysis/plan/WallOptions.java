package weatherlap.analysis.plan;

import java.util.List;
import java.util.Optional;
import weatherlap.sim.Each;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/** The ways of doing a wall: all of them up to {@link #MOST_EXACT} openings, some of a wall with more. */
sealed interface WallOptions permits AllWays, SomeWays {
    /** Openings of a wall up to which every plan is tried. */
    int MOST_EXACT = 12;

    /** @param open in the order of the wall's openings */
    static WallOptions of(Wall wall, List<OpenMethods> open) {
        List<List<Way>> ways =
                Each.upTo(open.size(), o -> open.get(o).ways(wall.openings().get(o)));
        return open.size() <= MOST_EXACT ? new AllWays(wall, ways) : SomeWays.of(wall, ways);
    }

    /** The cheapest that uses no other methods than these; empty where there is none. */
    Optional<WallOption> cheapest(int set);

    /** Those of less than so many USD that use no other methods than these. */
    List<WallOption> below(double belowUsd, int set);

    /** No way of doing the wall costs less, USD; less than the cheapest where not all were tried. */
    double leastUsd();

    /** Whether no way was left out that could be cheaper. */
    default boolean isExact() {
        return leastUsd() == cheapest(~0).orElseThrow().usd();
    }
}
