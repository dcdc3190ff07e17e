package weatherlap.sim.random;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.rng.UniformRandomProvider;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** 256 draws of one cause of a house: bare random numbers, which are the floor, and the three ways of sampling. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class UniformsBenchmark {
    private static final int DRAWS = 256;

    private final Streams streams = new Streams(1);
    private final UniformRandomProvider bare = streams.world("floor");
    private final Uniforms sobol = uniforms(Sampling.SOBOL);
    private final Uniforms stratified = uniforms(Sampling.STRATIFIED);
    private final Uniforms plain = uniforms(Sampling.PLAIN);

    private Uniforms uniforms(Sampling sampling) {
        return new Uniforms(sampling, DRAWS, streams, List.of("cause"));
    }

    @Benchmark
    public double[] bareRandomNumbers() {
        double[] numbers = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            numbers[d] = bare.nextDouble();
        }
        return numbers;
    }

    @Benchmark
    public double[] sobol() {
        return sobol.house("cause", "H1");
    }

    @Benchmark
    public double[] stratified() {
        return stratified.house("cause", "H1");
    }

    @Benchmark
    public double[] plain() {
        return plain.house("cause", "H1");
    }
}
