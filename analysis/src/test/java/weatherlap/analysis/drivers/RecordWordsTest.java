package weatherlap.analysis.drivers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.sensitivity.PartialInformation.Worth;
import weatherlap.datasets.assumptions.AssumptionTables;

/** Which records are worth keeping, by made worths of the bundled rows. */
class RecordWordsTest {
    private static final List<Factor> FACTORS =
            Factors.ranged(AssumptionTables.bundled().assumptions());

    private static String words(String first, double firstUsd, String second, double secondUsd) {
        List<Worth> worths = FACTORS.stream()
                .map(factor -> new Worth(
                        factor.name().equals(first) ? firstUsd : factor.name().equals(second) ? secondUsd : 1, 2))
                .toList();
        return RecordWords.of(FACTORS, worths, 3);
    }

    @Test
    void theBestRowOfEachKindStandsForIt() {
        assertThat(words("labour-steps/ff_out", 12, "lap-faults/capping_only_line", 40))
                .isEqualTo(
                        "Records worth keeping for this answer, the best first: who called back (callbacks.csv, for callbacks), at least"
                                + " $40 \u00b1 2 a house by lap-faults/capping_only_line alone; hours of finished jobs (jobs.csv, for calibrate), at"
                                + " least $12 \u00b1 2 a house by labour-steps/ff_out alone.");
    }

    @Test
    void scalarsOfTheLevelOfLeaksAreToldByCalls() {
        assertThat(words("damage_median_l_per_year", 12, "gross_margin", 90))
                .contains("who called back", "by damage_median_l_per_year alone")
                .doesNotContain("gross_margin");
    }

    @Test
    void whatIsWorthNoMoreThanNoiseIsNotAskedFor() {
        assertThat(words("labour-steps/ff_out", 2.9, "lap-faults/capping_only_line", 3))
                .contains("none stands out of the noise");
    }
}
