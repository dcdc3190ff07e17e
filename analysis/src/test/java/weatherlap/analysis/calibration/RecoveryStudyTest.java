package weatherlap.analysis.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A few shops of the study whose table stands in analysis/README.md. */
class RecoveryStudyTest {
    /** Shops 1 to 12 of 13 rates: the share has a standard error of about 0.025, the level one of 0.5 %. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
    void intervalsHoldAndTheLevelIsRight(int place) {
        RecoveryStudy study =
                RecoveryStudy.of(CalibrationFixtures.assumptions(), RecoveryStudy.Case.ALL.get(place), 12);
        assertThat(study.inside()).isCloseTo(0.9, within(0.09));
        assertThat(study.bias()).isCloseTo(0, within(0.03));
    }
}
