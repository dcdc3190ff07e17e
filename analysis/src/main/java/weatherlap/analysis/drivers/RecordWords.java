package weatherlap.analysis.drivers;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weatherlap.analysis.sensitivity.PartialInformation.Worth;
import weatherlap.sim.assumptions.Scalar;

/**
 * Which records of a shop are worth keeping: those that could tell a row whose worth stands out of the noise. Worths of rows do not add up,
 * so that each kind of records stands by its best row, a floor of what all its rows are worth.
 */
final class RecordWords {
    private static final Set<String> LEVEL = Arrays.stream(new Scalar[] {
                Scalar.DAMAGE_MEDIAN_L_PER_YEAR,
                Scalar.DAMAGE_SPREAD,
                Scalar.DRYING_L_PER_YEAR,
                Scalar.SOUND_SEAL_PASSES,
                Scalar.REPAIR_COST_LOW_USD,
                Scalar.REPAIR_COST_USD,
                Scalar.REPAIR_COST_HIGH_USD,
                Scalar.SERVICE_RESERVE
            })
            .map(Scalar::key)
            .collect(Collectors.toUnmodifiableSet());

    /** A kind of records, and what it could tell. */
    private enum Records {
        CALLS("who called back (callbacks.csv, for callbacks)"),
        HOURS("hours of finished jobs (jobs.csv, for calibrate)"),
        INVOICES("invoices of units and material (own figures in units.csv and materials.csv)");

        private final String label;

        Records(String label) {
            this.label = label;
        }

        boolean tell(Factor factor) {
            return switch (this) {
                case CALLS -> factor.table().equals("lap-faults") || LEVEL.contains(factor.name());
                case HOURS -> factor.table().equals("labour-steps");
                case INVOICES -> Set.of("materials", "units").contains(factor.table());
            };
        }
    }

    private RecordWords() {}

    /**
     * @param worths of knowing each factor, USD a house
     * @param nothingUsd what noise looks worth
     */
    static String of(List<Factor> factors, List<Worth> worths, double nothingUsd) {
        Comparator<Integer> byWorth =
                Comparator.comparingDouble((Integer f) -> worths.get(f).value());
        record Best(Records records, int factor) {}
        List<Best> best = Arrays.stream(Records.values())
                .flatMap(records -> IntStream.range(0, factors.size())
                        .boxed()
                        .filter(f ->
                                records.tell(factors.get(f)) && worths.get(f).value() > nothingUsd)
                        .max(byWorth)
                        .map(f -> new Best(records, f))
                        .stream())
                .sorted(Comparator.comparing(Best::factor, byWorth.reversed()))
                .toList();
        if (best.isEmpty()) {
            return "Records worth keeping for this answer: none stands out of the noise; what they tell would not change the choice.";
        }
        return "Records worth keeping for this answer, the best first: "
                + best.stream()
                        .map(one -> String.format(
                                Locale.ROOT,
                                "%s, at least $%,.0f \u00b1 %,.0f a house by %s alone",
                                one.records().label,
                                worths.get(one.factor()).value(),
                                worths.get(one.factor()).error(),
                                factors.get(one.factor()).name()))
                        .collect(Collectors.joining("; "))
                + ".";
    }
}
