package weatherlap.analysis.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weatherlap.sim.method.Method;

class LeakWordsTest {
    @Test
    void aPointOrLessIsAboutEqual() {
        assertThat(LeakWords.verdict(Method.FULL_FLANGE, 0.031, Method.INSERT, 0.038))
                .isEqualTo(
                        "For leaks the two methods are about equal here: 3.1% with full-flange, 3.8% with the insert (our judgment).");
    }

    /** Behind brick it is full-frame that stands beside the insert. */
    @Test
    void theDrierOfAnyTwoIsNamed() {
        assertThat(LeakWords.verdict(Method.FULL_FRAME, 0.2, Method.INSERT, 0.05))
                .isEqualTo("The insert leaks less here: 5.0%, against 20.0% with full-frame (our judgment).");
        assertThat(LeakWords.verdict(Method.FULL_FLANGE, 0.05, Method.INSERT, 0.2))
                .isEqualTo("Full-flange leaks less here: 5.0%, against 20.0% with the insert (our judgment).");
    }
}
