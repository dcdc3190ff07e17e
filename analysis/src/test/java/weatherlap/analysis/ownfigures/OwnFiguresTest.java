package weatherlap.analysis.ownfigures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.portfolio.StandardJob;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;

class OwnFiguresTest {
    private static final AssumptionTables TABLES = AssumptionTables.bundled();
    private static final OwnFigures OWN = new OwnFigures(TABLES.assumptions(), StandardJob.house());
    /** Eight hours of which one is on the road. */
    private static final double DAY_MINUTES = 420;

    private static double aDay(OwnFigures.Tuned tuned, Method method) {
        return HouseTakeoff.work(
                        StandardJob.house(),
                        method,
                        TABLES.withSteps(tuned.steps()).assumptions())
                .openingsADay(DAY_MINUTES);
    }

    @ParameterizedTest
    @CsvSource({"7, 3", "9, 4", "8, 4.2"})
    void theJobComesOutAtTheFigures(double insert, double flange) {
        OwnFigures.Tuned tuned = OWN.tuned(Map.of(Method.INSERT, insert, Method.FULL_FLANGE, flange), "own");
        assertThat(aDay(tuned, Method.INSERT)).isCloseTo(insert, within(1e-6));
        assertThat(aDay(tuned, Method.FULL_FLANGE)).isCloseTo(flange, within(1e-6));
        assertThat(tuned.moved().keySet()).allMatch(step -> step.origin().basis() == Basis.OWN_FIGURE);
    }

    /** A figure of inserts moves no step that only a full-flange has, none that the job lacks, and none out of its range. */
    @Test
    void onlyStepsOfTheJobMoveAndWithinTheirRange() {
        OwnFigures.Tuned tuned = OWN.tuned(Map.of(Method.INSERT, 7.0), "own");
        assertThat(tuned.moved().keySet().stream().map(LabourStep::id))
                .contains("in_capping", "in_set")
                .doesNotContain("ff_set", "in_metal_bars", "in_weights", "staging");
        for (int s = 0; s < tuned.steps().size(); s++) {
            ThreePoint before = TABLES.assumptions().steps().get(s).minutes();
            assertThat(tuned.steps().get(s).minutes().mean()).isBetween(before.low() - 1e-9, before.high() + 1e-9);
        }
        assertThat(tuned.moved().values()).allMatch(change -> change > 0);
    }

    /** A row says what it rested on before, once, however often it is tuned. */
    @Test
    void aRowKeepsWhatItRestedOnBefore() {
        OwnFigures.Tuned once = OWN.tuned(Map.of(Method.INSERT, 8.0), "insert=8.0");
        OwnFigures.Tuned twice = new OwnFigures(TABLES.withSteps(once.steps()).assumptions(), StandardJob.house())
                .tuned(Map.of(Method.INSERT, 9.0), "insert=9.0");
        String source = twice.moved().keySet().stream()
                .filter(step -> step.id().equals("in_capping"))
                .findFirst()
                .orElseThrow()
                .origin()
                .source();
        assertThat(source)
                .startsWith("own figure: insert=9.0; before: capping covers wood")
                .doesNotContain("8.0");
    }

    @Test
    void whatTheRangesCannotReachIsRefused() {
        OwnFigures.Reach reach = OWN.reach(Method.INSERT);
        assertThat(reach.now()).isBetween(reach.low(), reach.high());
        assertThat(aDay(OWN.tuned(Map.of(Method.INSERT, reach.high() * 0.999), "own"), Method.INSERT))
                .isCloseTo(reach.high() * 0.999, within(1e-6));
        assertThatThrownBy(() -> OWN.tuned(Map.of(Method.INSERT, reach.high() * 1.001), "own"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("insert=");
        assertThatThrownBy(() -> OWN.tuned(Map.of(Method.INSERT, reach.low() * 0.999), "own"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Closed form of the conditional mean, where no bound is met: m = μ + σ² w (T − w·μ) / Σ w² σ². */
    @Test
    void withoutBoundsItIsTheConditionalMean() {
        List<ThreePoint> points = List.of(new ThreePoint(0, 10, 20), new ThreePoint(0, 20, 40));
        double first = points.get(0).variance();
        double second = points.get(1).variance();
        double gap = 53 - (1 * 10 + 2 * 20);
        double[] values = BoundedShift.of(points, new double[][] {{1, 2}}, new double[] {53})
                .orElseThrow();
        assertThat(values[0]).isCloseTo(10 + first * gap / (first + 4 * second), within(1e-6));
        assertThat(values[1]).isCloseTo(20 + second * 2 * gap / (first + 4 * second), within(1e-6));
    }
}
