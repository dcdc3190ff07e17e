package weatherlap.analysis.sensitivity;

import java.util.List;
import java.util.stream.IntStream;
import weatherlap.sim.Check;

/**
 * Factors that are asked about together.
 *
 * @param factors their columns, from 0
 */
public record FactorGroup(String name, List<Integer> factors) {
    public FactorGroup {
        Check.text("factor group", name);
        factors = List.copyOf(factors);
    }

    /** Each factor by itself, under its name. */
    public static List<FactorGroup> singly(List<String> names) {
        return IntStream.range(0, names.size())
                .mapToObj(i -> new FactorGroup(names.get(i), List.of(i)))
                .toList();
    }
}
