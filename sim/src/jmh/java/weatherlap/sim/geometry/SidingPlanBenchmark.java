package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.List;
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
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Room;
import weatherlap.sim.made.MadeHouse;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.made.MadeWall;
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
        wall = MadeWall.of("front", openings)
                .facing(180)
                .size(40, 18)
                .courses(exposureIn, 150)
                .wall();
        house = MadeHouse.of("h", wall).built(1990).storeys(2).house();
    }

    private static Opening window(String id, double leftIn, double sillHeightIn) {
        return MadeOpening.of(id)
                .in(Room.BEDROOM)
                .size(36, 54)
                .at(leftIn, sillHeightIn)
                .opening();
    }

    @Benchmark
    public List<SidingRun> runs() {
        return SidingRuns.of(
                house, wall, java.util.Collections.nCopies(wall.openings().size(), true));
    }

    @Benchmark
    public SidingPlan plan() {
        return SidingPlan.of(house, wall, wall.openings());
    }
}
