package weatherlap.analysis.callbacks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Levels of fault groups of made shops of which the truth is known. */
class GroupFitTest {
    private static final LevelFit.Prior PRIOR = new LevelFit.Prior(0.4, 0.4, List.of(0.5));
    private static final double LAG = 0.5;

    /** An insert in a poor wall and in a good one, and a flanged unit: old laps from the start, seals once they age. */
    private static final List<Map<FaultGroup, LaggedExposure>> KINDS =
            List.of(kind(0.10, 0.02, 0.05), kind(0.02, 0.02, 0.05), kind(0.01, 0.09, 0.0));

    private static Map<FaultGroup, LaggedExposure> kind(double old, double own, double seals) {
        Map<FaultGroup, LaggedExposure> kind = new EnumMap<>(FaultGroup.class);
        kind.put(FaultGroup.OLD_LAPS, LaggedExposure.constant(old));
        kind.put(FaultGroup.OWN_LAPS, LaggedExposure.constant(own));
        kind.put(FaultGroup.SEALS, new LaggedExposure(List.of(0.0, 4.0, 10.0), List.of(0.0, seals, 10 * seals)));
        return kind;
    }

    private static UniformRandomProvider stream(long seed) {
        return RandomSource.KISS.create(seed);
    }

    /** 300 shops drawn from the prior, seed 11: the share of the 90 % intervals that hold the true level; standard error about 0.01. */
    @ParameterizedTest
    @ValueSource(ints = {20, 100, 500})
    void intervalsHoldTheTruthNineTimesInTen(int jobs) {
        RandomGenerator random = new Well19937c(11);
        int shops = 300;
        int held = 0;
        for (int shop = 0; shop < shops; shop++) {
            double shared = gamma(random, 1 / PRIOR.shared(), 1);
            Map<FaultGroup, Double> truth = new EnumMap<>(FaultGroup.class);
            for (FaultGroup group : FaultGroup.values()) {
                truth.put(group, gamma(random, 1 / PRIOR.between(), shared));
            }
            GroupFit fit = GroupFit.of(made(random, jobs, truth), PRIOR, LAG, stream(shop));
            for (FaultGroup group : FaultGroup.values()) {
                double below = fit.probabilityBelow(group, truth.get(group));
                held += below >= 0.05 && below <= 0.95 ? 1 : 0;
            }
        }
        assertThat(held / (3.0 * shops)).isBetween(0.87, 0.93);
    }

    /** Old laps three times the tables, own laps a third: 1,500 jobs find both and say that they can. */
    @Test
    void groupsThatDifferAreFound() {
        Map<FaultGroup, Double> truth =
                Map.of(FaultGroup.OLD_LAPS, 3.0, FaultGroup.OWN_LAPS, 0.33, FaultGroup.SEALS, 1.0);
        GroupFit fit = GroupFit.of(made(new Well19937c(5), 1500, truth), PRIOR, LAG, stream(5));
        truth.forEach((group, level) -> {
            LevelFit.Level found = fit.level(group);
            assertThat(level).as(group.label()).isBetween(0.7 * found.low(), 1.3 * found.high());
        });
        assertThat(fit.level(FaultGroup.OLD_LAPS).low()).isGreaterThan(1.5);
        assertThat(fit.level(FaultGroup.OWN_LAPS).high()).isLessThan(0.8);
        assertThat(fit.tells(FaultGroup.OLD_LAPS)).isTrue();
        assertThat(fit.tells(FaultGroup.OWN_LAPS)).isTrue();
    }

    /** Without a job the levels are those of the prior: mean 1, none told. */
    @Test
    void withoutRecordsThePriorStays() {
        GroupFit fit = GroupFit.of(List.of(), PRIOR, LAG, stream(1));
        for (FaultGroup group : FaultGroup.values()) {
            assertThat(fit.level(group).mean()).isCloseTo(1, within(0.1));
            assertThat(fit.tells(group)).isFalse();
        }
    }

    /** A group that no job could show moves with those that could, part of the way. */
    @Test
    void aGroupWithoutExposureMovesWithTheRest() {
        Map<FaultGroup, LaggedExposure> flanged = kind(0, 0.09, 0);
        List<GroupFit.Job> jobs = new ArrayList<>();
        for (int job = 0; job < 300; job++) {
            jobs.add(new GroupFit.Job(flanged, 5, job % 2 == 0 ? List.of(1 + job / 100.0) : List.of()));
        }
        GroupFit fit = GroupFit.of(jobs, PRIOR, 0, stream(2));
        double seen = 150 / (300 * 0.09 * 5);
        assertThat(fit.level(FaultGroup.OWN_LAPS).mean()).isCloseTo(seen, within(0.1 * seen));
        assertThat(fit.tells(FaultGroup.OWN_LAPS)).isTrue();
        assertThat(fit.tells(FaultGroup.OLD_LAPS)).isFalse();
        assertThat(fit.level(FaultGroup.OLD_LAPS).mean()).isBetween(1.0, seen + 0.1);
    }

    private static double gamma(RandomGenerator random, double shape, double mean) {
        return new GammaDistribution(random, shape, mean / shape).sample();
    }

    /** Jobs followed for half a year to eight; what had not been told by then is not known. */
    private static List<GroupFit.Job> made(RandomGenerator random, int jobs, Map<FaultGroup, Double> truth) {
        List<GroupFit.Job> made = new ArrayList<>();
        for (int job = 0; job < jobs; job++) {
            Map<FaultGroup, LaggedExposure> kind = KINDS.get(job % KINDS.size());
            double years = 0.5 + 7.5 * random.nextDouble();
            List<Double> calls = new ArrayList<>();
            kind.forEach((group, exposure) -> calls(random, exposure, truth.get(group), years, calls));
            made.add(new GroupFit.Job(kind, years, calls));
        }
        return made;
    }

    private static void calls(
            RandomGenerator random, LaggedExposure exposure, double level, double years, List<Double> calls) {
        double step = 0.25;
        for (double start = 0; start < years; start += step) {
            double end = Math.min(years, start + step);
            double expected = exposure.happened(end) - exposure.happened(start);
            int events = expected > 0 ? new PoissonDistribution(random, level * expected, 1e-12, 10_000).sample() : 0;
            for (int i = 0; i < events; i++) {
                double told = start + (end - start) * random.nextDouble() - LAG * Math.log(1 - random.nextDouble());
                if (told <= years) {
                    calls.add(told);
                }
            }
        }
    }
}
