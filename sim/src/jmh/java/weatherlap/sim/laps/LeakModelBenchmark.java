package weatherlap.sim.laps;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.rng.UniformRandomProvider;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Streams;

/**
 * One opening under an insert, with the four paths of the tests' fixture: compiling its paths, and the inner loop for one path and one
 * draw. It uses three random numbers: the quality of the laps, the share admitted and the weather. What bare ones cost stands beside it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LeakModelBenchmark {
    private static final int DRAWS = 256;
    private static final int PATHS = 4;

    private final UniformRandomProvider bare = new Streams(1).world("floor");
    private final Opening opening = LapFixtures.unseen("w1");
    private final HouseLaps laps =
            HouseLaps.of(LapFixtures.house(Barrier.HOUSEWRAP, List.of(opening)), LapFixtures.tables());
    private final LeakModel model = LeakModel.of(opening, Method.INSERT, LapFixtures.exposure(80), laps);
    /** Of two houses by turns, since paths are drawn once a house. */
    private final LeakCauses[] causes = {LeakModelTest.causes(DRAWS, 3), LeakModelTest.causes(DRAWS, 4)};

    private int house;
    private final LeakDraws draws = new LeakDraws(DRAWS);

    public LeakModelBenchmark() {
        if (model.paths().size() != PATHS) {
            throw new IllegalStateException("the fixture has other paths than the benchmark divides by");
        }
    }

    @Benchmark
    public LeakModel compileAnOpening() {
        return LeakModel.of(opening, Method.INSERT, LapFixtures.exposure(80), laps);
    }

    @Benchmark
    @OperationsPerInvocation(PATHS * DRAWS)
    public double[] onePathAndDraw() {
        model.run(causes[house ^= 1], draws);
        return draws.damage();
    }

    @Benchmark
    @OperationsPerInvocation(PATHS * DRAWS)
    public double[] threeBareRandomNumbers() {
        double[] numbers = new double[3 * PATHS * DRAWS];
        for (int d = 0; d < numbers.length; d++) {
            numbers[d] = bare.nextDouble();
        }
        return numbers;
    }
}
