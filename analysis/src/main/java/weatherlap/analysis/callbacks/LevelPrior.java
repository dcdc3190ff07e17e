package weatherlap.analysis.callbacks;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.Workmanship;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Normal;

/**
 * How far the level of the leaks may be off by the tables themselves. Each range that the level hangs on is taken at its low and its high end,
 * which are read as the 5 % and 95 % points of a lognormal level:
 *
 * <pre>  s_i = |ln E(high) − ln E(low)| / (2 · 1.645),   s² = Σ s_i²,   variance on each of the two floors e^(s²/2) − 1</pre>
 *
 * <p>s² is halved between what all methods share and what sets one apart (judgement). The priors of the lap faults have no range in the
 * tables; how careful the crew works stands for them.
 */
final class LevelPrior {
    private static final double LEAST = 0.2;
    private static final double MOST = 1.2;
    private static final List<Scalar> RANGED = List.of(
            Scalar.DAMAGE_MEDIAN_L_PER_YEAR, Scalar.DAMAGE_SPREAD, Scalar.DRYING_L_PER_YEAR, Scalar.SOUND_SEAL_PASSES);

    /** Mean lags from damage to call, years, each as likely as the next (judgement: a stain shows within months or a few years). */
    private static final List<Double> LAGS_YEARS = List.of(0.1, 0.25, 0.5, 1.0, 2.0);

    private LevelPrior() {}

    static LevelFit.Prior of(JobMix mix, Assumptions assumptions, OptionalDouble lagYears) {
        double squares = Stream.concat(
                        RANGED.stream().flatMap(scalar -> ends(scalar, assumptions)),
                        Stream.of(new Ends(
                                work(assumptions, Workmanship.CAREFUL), work(assumptions, Workmanship.HURRIED))))
                .mapToDouble(ends -> ends.square(mix))
                .sum();
        double deviation = Math.min(MOST, Math.max(LEAST, Math.sqrt(squares)));
        double variance = Math.expm1(deviation * deviation / 2);
        return new LevelFit.Prior(
                variance, variance, lagYears.isPresent() ? List.of(lagYears.getAsDouble()) : LAGS_YEARS);
    }

    private static Stream<Ends> ends(Scalar scalar, Assumptions assumptions) {
        Setting setting = assumptions.scenario().settings().get(scalar);
        return setting.range().stream()
                .map(range -> new Ends(
                        assumptions.with(assumptions.scenario().with(scalar, range.low())),
                        assumptions.with(assumptions.scenario().with(scalar, range.high()))));
    }

    private static Assumptions work(Assumptions assumptions, Workmanship work) {
        return assumptions.with(
                assumptions.scenario().with(Choice.WORKMANSHIP, work.name().toLowerCase(Locale.ROOT)));
    }

    private record Ends(Assumptions low, Assumptions high) {
        /** Variance of the logarithm of the level, mean over the methods. */
        double square(JobMix mix) {
            Map<Method, Double> below = mix.damage(low);
            Map<Method, Double> above = mix.damage(high);
            return below.keySet().stream()
                    .flatMapToDouble(
                            m -> DoubleStream.of(Math.log(above.get(m) / below.get(m)) / (2 * Normal.NINETY_PERCENT)))
                    .filter(Double::isFinite)
                    .map(s -> s * s)
                    .average()
                    .orElse(0);
        }
    }
}
