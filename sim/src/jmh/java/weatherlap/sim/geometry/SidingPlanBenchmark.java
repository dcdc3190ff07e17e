package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.InteriorReturn;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Room;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.house.Terrain;
import weatherlap.sim.quantity.SidingRun;

/** Time to count the panels that come down on one wall of 40 × 18 ft, against drawing the whole plan. Invented wall. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SidingPlanBenchmark {
    @Param({"1", "6"})
    public int windows;

    @Param({"4", "10"})
    public double exposureIn;

    private House house;
    private Elevation wall;

    @Setup
    public void build() {
        List<Opening> openings = new ArrayList<>();
        for (int i = 0; i < windows; i++) {
            openings.add(window("W" + i, 20 + 150 * (i % 3), i < 3 ? 38 : 134));
        }
        wall = new Elevation(
                "front",
                180,
                40,
                18,
                12,
                OptionalDouble.of(exposureIn),
                OptionalDouble.of(150),
                SidingCondition.SOUND,
                OptionalDouble.empty(),
                openings);
        house = new House(
                "h",
                "benchmark",
                1990,
                Terrain.SUBURBAN,
                Cladding.VINYL_SIDING,
                Barrier.HOUSEWRAP,
                2,
                Optional.empty(),
                LeadTest.UNKNOWN,
                List.of(wall));
    }

    private static Opening window(String id, double leftIn, double sillHeightIn) {
        return new Opening(
                id,
                Room.BEDROOM,
                Operation.DOUBLE_HUNG,
                Operation.DOUBLE_HUNG,
                1,
                36,
                54,
                leftIn,
                sillHeightIn,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                FrameMaterial.ALUMINUM,
                FrameCondition.SOUND,
                InteriorReturn.DRYWALL,
                1,
                OptionalDouble.empty(),
                Lap.UNKNOWN,
                Lap.UNKNOWN,
                Lap.UNKNOWN,
                Sighting.UNKNOWN,
                Optional.empty());
    }

    @Benchmark
    public List<SidingRun> runs() {
        return SidingRuns.of(house, wall);
    }

    @Benchmark
    public SidingPlan plan() {
        return SidingPlan.of(house, wall, wall.openings());
    }
}
