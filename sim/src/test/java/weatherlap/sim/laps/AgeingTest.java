package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.house.Cladding;

/** How seals age. */
class AgeingTest {

    private static final WeibullLife SURVEY = through(10, 0.55, 20, 0.95);

    /** The life of which the shares {@code early} and {@code late} have failed by two ages. */
    private static WeibullLife through(double earlyYears, double early, double lateYears, double late) {
        double shape = Math.log(Math.log1p(-late) / Math.log1p(-early)) / Math.log(lateYears / earlyYears);
        return new WeibullLife(shape, earlyYears / Math.pow(-Math.log1p(-early), 1 / shape));
    }

    @Test
    void weibullThroughTheSurveyOfJointsBeingResealed() {
        // RILEM TC 190-SBJ: 55 % within 10 years, 95 % within 20. k = ln(ln 0.05/ln 0.45)/ln 2, η = 10/(−ln
        // 0.45)^(1/k).
        assertThat(SURVEY.shape()).isCloseTo(1.907530, within(5e-7));
        assertThat(SURVEY.scaleYears()).isCloseTo(11.251981, within(5e-7));
        assertThat(SURVEY.failedBy(10)).isCloseTo(0.55, within(1e-12));
        assertThat(SURVEY.failedBy(20)).isCloseTo(0.95, within(1e-12));
    }

    @Test
    void shareFailedByFiveAndFifteenYears() {
        assertThat(SURVEY.failedBy(5)).isCloseTo(0.19172, within(5e-6));
        assertThat(SURVEY.failedBy(15)).isCloseTo(0.82281, within(5e-6));
        assertThat(SURVEY.failedBy(0)).isZero();
    }

    @Test
    void failingBetweenTwoAgesIsConditional() {
        double expected = (SURVEY.failedBy(8) - SURVEY.failedBy(7)) / (1 - SURVEY.failedBy(7));
        assertThat(SURVEY.failsBetween(7, 8)).isCloseTo(expected, within(1e-14));
    }

    @Test
    void aSealPassesMoreEachYearUntilItIsRenewed() {
        LineOfDefence line = new LineOfDefence(0.01, 0.2, Optional.of(SURVEY), 5);
        assertThat(line.passes(1)).isCloseTo(0.01 + 0.19 * SURVEY.failedBy(0.5), within(1e-15));
        assertThat(line.passes(5)).isGreaterThan(line.passes(4));
        assertThat(line.passes(6)).isEqualTo(line.passes(1));
        LineOfDefence never = new LineOfDefence(0.01, 0.2, Optional.of(SURVEY), 0);
        assertThat(never.passes(6)).isGreaterThan(never.passes(5));
        assertThat(never.meanPasses(20)).isGreaterThan(line.meanPasses(20));
    }

    @Test
    void claddingAndNothingDoNotAge() {
        LineOfDefence cladding = LineOfDefence.of(FirstLine.CLADDING, Cladding.VINYL_SIDING, LapFixtures.scenario());
        assertThat(cladding.passes(1)).isEqualTo(cladding.passes(20)).isEqualTo(0.25);
        assertThat(LineOfDefence.of(FirstLine.NONE, Cladding.VINYL_SIDING, LapFixtures.scenario())
                        .meanPasses(20))
                .isOne();
    }
}
