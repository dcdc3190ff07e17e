package weatherlap.analysis.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.method.Method;

class StepWordsTest {
    private static final List<LabourStep> STEPS =
            AssumptionTables.bundled().assumptions().steps();

    /** "Set, shim, level and square the unit" is a step of more than one method: a list of rates says whose it is. */
    @Test
    void noTwoStepsOfTheBundledTableThatDifferInMethodAreCalledTheSame() {
        List<String> names = STEPS.stream()
                .map(step -> StepWords.name(step, STEPS, EnumSet.allOf(Method.class)))
                .toList();
        assertThat(names).anyMatch(name -> name.startsWith("Set, shim, level and square the unit, "));
        for (int s = 0; s < STEPS.size(); s++) {
            for (int t = 0; t < s; t++) {
                if (!STEPS.get(s).method().equals(STEPS.get(t).method())) {
                    assertThat(names.get(s)).isNotEqualTo(names.get(t));
                }
            }
        }
        LabourStep set = STEPS.stream()
                .filter(step -> step.id().equals("in_set"))
                .findFirst()
                .orElseThrow();
        assertThat(StepWords.name(set, STEPS, EnumSet.of(Method.INSERT))).isEqualTo(set.tradeName());
    }
}
