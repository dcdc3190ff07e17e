package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.method.Method;

/** What was seen at one opening moves it and its neighbours. */
class EvidenceTest {

    private static final int HEAD_REVERSED = 0;
    private static final Opening UNSEEN = LapFixtures.unseen("w2");

    private static HouseLaps house(Opening seen, double reliability) {
        LeakTables tables = LeakTables.of(LapFixtures.assumptions(
                LapFixtures.FAULTS, LapFixtures.scenario().with(Scalar.INSPECTION_RELIABILITY, reliability)));
        return HouseLaps.of(LapFixtures.house(Barrier.HOUSEWRAP, List.of(seen, UNSEEN)), tables);
    }

    private static Opening head(Lap lap) {
        return LapFixtures.opening("w1", lap, Lap.UNKNOWN, Lap.UNKNOWN, Sighting.UNKNOWN);
    }

    private static double probability(HouseLaps laps, Opening opening) {
        return LeakModel.of(opening, Method.INSERT, LapFixtures.exposure(60), laps).paths().stream()
                .filter(path -> path.faultIndex() == HEAD_REVERSED)
                .mapToDouble(LeakPath::probability)
                .findFirst()
                .orElse(0);
    }

    @Test
    void withoutSightsThePriorStands() {
        HouseLaps laps = house(LapFixtures.unseen("w1"), 0.85);
        assertThat(laps.prior(HEAD_REVERSED)).isCloseTo(0.2, within(1e-15));
        assertThat(probability(laps, UNSEEN)).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void aCertainSightSettlesItsOpeningAndMovesTheOtherByTheCorrelation() {
        // Prior 0.2, correlation 0.3: the neighbour goes to 0.2 + 0.3·0.8 = 0.44, or to 0.2 − 0.3·0.2 = 0.14.
        Opening reversed = head(Lap.REVERSED);
        assertThat(probability(house(reversed, 1), reversed)).isCloseTo(1, within(1e-12));
        assertThat(probability(house(reversed, 1), UNSEEN)).isCloseTo(0.44, within(1e-9));
        Opening shingled = head(Lap.SHINGLED);
        assertThat(probability(house(shingled, 1), shingled)).isCloseTo(0, within(1e-12));
        assertThat(probability(house(shingled, 1), UNSEEN)).isCloseTo(0.14, within(1e-9));
    }

    @Test
    void aDoubtfulSightFollowsBayes() {
        // r = 0.85: 0.2·0.85/(0.2·0.85 + 0.8·0.15) = 0.586207; the neighbour 0.586207·0.44 + 0.413793·0.14 = 0.315862.
        Opening reversed = head(Lap.REVERSED);
        HouseLaps laps = house(reversed, 0.85);
        assertThat(probability(laps, UNSEEN)).isCloseTo(0.315862, within(5e-6));
        // The table of quantiles replaces an integral here.
        assertThat(probability(laps, reversed)).isCloseTo(0.586207, within(0.01));
    }

    @Test
    void aMissingLapSaysNothingOfAReversedOne() {
        Opening missing = head(Lap.MISSING);
        HouseLaps laps = house(missing, 0.85);
        assertThat(probability(laps, missing)).isCloseTo(0.2, within(1e-12));
        assertThat(probability(laps, UNSEEN)).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void aLapThatSomebodySawNeedsABarrier() {
        LeakTables tables = LapFixtures.tables();
        double none = HouseLaps.of(LapFixtures.house(Barrier.NONE, List.of(UNSEEN)), tables)
                .prior(HEAD_REVERSED);
        double seen = HouseLaps.of(LapFixtures.house(Barrier.NONE, List.of(UNSEEN, head(Lap.REVERSED))), tables)
                .prior(HEAD_REVERSED);
        // The row holds 0.2 over housewrap, 0.1 over building paper, 0 without: one of the first two, nobody knows
        // which.
        assertThat(none).isZero();
        assertThat(seen).isCloseTo(0.15, within(1e-12));
    }

    @Test
    void aStainMultipliesTheOddsOnce() {
        // Odds 0.25 · 2.5 = 0.625: probability 0.384615.
        Opening stained = LapFixtures.opening("w1", Lap.UNKNOWN, Lap.UNKNOWN, Lap.UNKNOWN, Sighting.YES);
        assertThat(probability(house(stained, 0.85), stained)).isCloseTo(0.384615, within(0.01));
        Opening clean = LapFixtures.opening("w1", Lap.UNKNOWN, Lap.UNKNOWN, Lap.UNKNOWN, Sighting.NO);
        assertThat(probability(house(clean, 0.85), clean)).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void anUnknownBarrierIsTheMixtureOfTheThree() {
        HouseLaps laps = HouseLaps.of(LapFixtures.house(Barrier.UNKNOWN, List.of(UNSEEN)), LapFixtures.tables());
        assertThat(laps.prior(HEAD_REVERSED)).isCloseTo((0.2 + 0.1 + 0) / 3, within(1e-15));
    }
}
