package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.method.Method;

/** The chance of damage explains itself. */
class LeakExplanationTest {

    private static final LeakCauses CAUSES = LeakModelTest.causes(400, 9);

    private static LeakExplanation explain(Opening opening, Method method, double rain, LeakDraws out) {
        HouseLaps laps = HouseLaps.of(LapFixtures.house(Barrier.HOUSEWRAP, List.of(opening)), LapFixtures.tables());
        LeakModel model = LeakModel.of(opening, method, LapFixtures.exposure(rain), laps);
        model.run(CAUSES, out);
        return LeakExplanation.of(
                model,
                out.contribution(),
                laps,
                opening,
                joint -> Amount.given(
                        "water at the " + joint, LapFixtures.exposure(rain).litresPerYear(joint), "L/year"));
    }

    @Test
    void theTreeSumsToTheChanceAndEveryPathNamesItsRow() {
        LeakDraws out = new LeakDraws(CAUSES.draws());
        Amount tree = explain(LapFixtures.unseen("w1"), Method.INSERT, 120, out).tree();
        assertThat(tree.value()).isCloseTo(Arrays.stream(out.damage()).average().orElseThrow(), within(1e-14));
        assertThat(tree.parts()).hasSize(4).allSatisfy(path -> assertThat(rows(path))
                .isGreaterThanOrEqualTo(2));
    }

    private static long rows(Amount amount) {
        long own = amount.origin().filter(o -> o.table().equals("lap-faults.csv")).stream()
                .count();
        return own
                + amount.parts().stream().mapToLong(LeakExplanationTest::rows).sum();
    }

    @Test
    void theLargestCausesComeFirstInWords() {
        LeakDraws out = new LeakDraws(CAUSES.draws());
        List<String> causes =
                explain(LapFixtures.unseen("w1"), Method.INSERT, 120, out).causes(3);
        assertThat(causes).hasSize(3).allMatch(text -> text.contains("judgement"));
        // Three quarters of the water at the opening runs to the sill, and four in five of these old sills have no pan.
        assertThat(causes.get(0)).startsWith("pan missing").contains("already in the wall");
        assertThat(Arrays.stream(out.contribution()).max().orElseThrow()).isEqualTo(out.contribution()[1]);
        assertThat(explain(LapFixtures.unseen("w1"), Method.INSERT, 0, out).causes(3))
                .isEmpty();
    }

    @Test
    void anInsertInAShelteredWallWithSoundLapsIsNearlyAsGoodAndSaysSo() {
        Opening sound = LapFixtures.opening("w1", Lap.SHINGLED, Lap.SHINGLED, Lap.SHINGLED, Sighting.NO);
        double insert = chance(sound, Method.INSERT, 15);
        double full = chance(sound, Method.FULL_FLANGE, 15);
        assertThat(insert - full).isBetween(-0.005, 0.01);
        assertThat(LeakExplanation.verdict(full, insert, 0.01))
                .contains("nearly as good")
                .contains("judgement");
        // Not always: in a wet wall with reversed laps it is not, and that is said as well.
        Opening bad = LapFixtures.opening("w1", Lap.REVERSED, Lap.MISSING, Lap.MISSING, Sighting.YES);
        assertThat(LeakExplanation.verdict(chance(bad, Method.FULL_FLANGE, 150), chance(bad, Method.INSERT, 150), 0.01))
                .startsWith("Full-flange leaks less");
    }

    private static double chance(Opening opening, Method method, double rain) {
        LeakDraws out = new LeakDraws(CAUSES.draws());
        explain(opening, method, rain, out);
        return Arrays.stream(out.damage()).average().orElseThrow();
    }
}
