package weatherlap.sim.rain;

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
import weatherlap.sim.assumptions.Scenario;

/** A year of invented hours, wet one in five, on a wall of one bearing: indices, spells and the shadow of any eave. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class DrivingRainBenchmark {
    private final Scenario scenario = RainFixtures.scenario();
    private final HourlyWeather year = RainFixtures.random(1, 1);

    /** The first wall: what does not depend on the wall is worked out too. */
    @Benchmark
    public WallRain firstWallOfAClimate() {
        return RainClimate.of(year, scenario).wall(180);
    }

    /** All that a house of eight bearings asks for. */
    @Benchmark
    public double eightWallsOfAClimate() {
        RainClimate climate = RainClimate.of(year, scenario);
        double total = 0;
        for (int bearing = 0; bearing < 360; bearing += 45) {
            total += climate.wall(bearing).isoLitresPerM2Year();
        }
        return total;
    }
}
