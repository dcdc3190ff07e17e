package weatherlap.sim.laps;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Opening;

/** One opening under an insert, with the four paths of the tests' fixture: compiling its paths, and 256 draws of them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LeakModelBenchmark {
    private static final int DRAWS = 256;

    private final Opening opening = LapFixtures.unseen("w1");
    private final HouseLaps laps =
            HouseLaps.of(LapFixtures.house(Barrier.HOUSEWRAP, List.of(opening)), LapFixtures.tables());
    private final LeakModel model = LeakModel.of(opening, Method.INSERT, LapFixtures.exposure(80), laps);
    private final LeakCauses causes = LeakModelTest.causes(DRAWS, 3);
    private final LeakDraws draws = new LeakDraws(DRAWS);

    @Benchmark
    public LeakModel compileAnOpening() {
        return LeakModel.of(opening, Method.INSERT, LapFixtures.exposure(80), laps);
    }

    @Benchmark
    public double[] drawAnOpening() {
        model.run(causes, draws);
        return draws.damage();
    }
}
