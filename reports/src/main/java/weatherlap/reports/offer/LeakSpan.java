package weatherlap.reports.offer;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.PlanSums;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Part;

/** Windows at which leak damage is expected within the horizon, by the best and by the worst of all choices that a house has. */
public record LeakSpan(double least, double most) {
    /** A least a fifth below the most tells them apart, where it is at least half a window in a hundred below (judgement). */
    private static final double CLEARLY = 0.8;

    private static final double LEAST = 0.005;

    /** Over the methods open at each window. */
    static LeakSpan of(PlanParts parts, HouseChoice choice) {
        return new LeakSpan(
                sum(parts.openings(), choice, Math::min, Double.POSITIVE_INFINITY),
                sum(parts.openings(), choice, Math::max, 0));
    }

    private static double sum(List<Part> parts, HouseChoice choice, DoubleBinaryOperator pick, double from) {
        double sum = 0;
        for (int o = 0; o < parts.size(); o++) {
            var closed = choice.closed().get(o);
            sum += parts.get(o).ways().stream()
                    .filter(way -> !closed.containsKey(way.method()))
                    .mapToDouble(PlanSums::leaks)
                    .reduce(from, pick);
        }
        return sum;
    }

    /** Whether the choices differ by more than judgement can tell. */
    public boolean tells() {
        return least < CLEARLY * most && most - least > LEAST;
    }

    /** Where an expected number of leaks stands, from the least to the most. */
    public LeakRank rank(double expectedLeaks) {
        return tells() ? LeakRank.at((expectedLeaks - least) / (most - least)) : LeakRank.SAME;
    }
}
