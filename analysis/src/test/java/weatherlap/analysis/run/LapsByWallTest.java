package weatherlap.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Lap;
import weatherlap.sim.laps.LeakPath;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.Simulator;

/** The bundled rows know the wall and the old unit: which laps a method reaches, and which faults can stand there at all. */
class LapsByWallTest {
    private static final Simulator SIMULATOR = new Simulator(Town.BUNDLED, Town.CLIMATE, Sampling.SOBOL, 64, 3);
    private static final Set<String> BEHIND_CLADDING = Set.of(
            "head_flap_reversed",
            "head_strip_missing",
            "jamb_barrier_unlapped",
            "jamb_strip_under_sill",
            "paper_strip_wrong_order");

    private static HouseTakeoff takeoff(House house, Method method) {
        return SIMULATOR.takeoff(house).get(method);
    }

    private static List<LeakPath> paths(House house, Method method) {
        return takeoff(house, method).openings().get(0).leaks().paths();
    }

    private static Set<String> ids(House house, Method method, Predicate<LeakPath> which) {
        return paths(house, method).stream()
                .filter(which)
                .map(path -> path.fault().id())
                .collect(Collectors.toSet());
    }

    private static boolean old(LeakPath path) {
        return path.fault().kind() == FaultKind.EXISTING;
    }

    private static House of(Cladding cladding) {
        return Town.like(Town.house("H1"), 1994, cladding, Barrier.HOUSEWRAP, FrameMaterial.ALUMINUM, Lap.UNKNOWN);
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName(
            "a unit without a flange leaves the wall shut: the barrier at jambs and head is not reached (common practice)")
    void aUnitWithoutAFlangeKeepsTheOldLapsAndGetsAJoint(Cladding cladding) {
        House house = of(cladding);
        assertThat(ids(house, Method.FULL_FRAME, LapsByWallTest::old))
                .containsAll(BEHIND_CLADDING)
                .doesNotContain("flange_unsealed_old", "old_sealant_dry", "frame_corner_open", "sill_pan_missing");
        assertThat(ids(house, Method.INSERT, LapsByWallTest::old)).containsAll(BEHIND_CLADDING);
        // No new laps: nothing the crew does stands behind the cladding.
        assertThat(ids(
                        house,
                        Method.FULL_FRAME,
                        path -> !old(path) && path.fault().firstLine() == FirstLine.CLADDING))
                .isEmpty();
        assertThat(ids(house, Method.FULL_FRAME, path -> path.fault().firstLine() == FirstLine.SEALANT))
                .contains("joint_only_line");
    }

    @Test
    void behindSidingTheOldLapsAreMended() {
        House house = of(Cladding.VINYL_SIDING);
        assertThat(ids(house, Method.FULL_FLANGE, LapsByWallTest::old)).containsExactly("barrier_missing");
        assertThat(ids(house, Method.FULL_FLANGE, path -> !old(path)))
                .contains("head_flap_not_down", "strips_wrong_order")
                .noneMatch(id -> id.startsWith("joint_") || id.startsWith("pan_"));
    }

    /** Brick and stucco leave no way for a flange: the house is taken off without it. */
    @ParameterizedTest
    @EnumSource(names = {"BRICK_VENEER", "STUCCO"})
    void masonryIsClosedToAFlange(Cladding masonry) {
        assertThat(SIMULATOR.takeoff(of(masonry)).keySet()).containsExactly(Method.FULL_FRAME, Method.INSERT);
        assertThat(SIMULATOR.simulate(of(masonry)).contrast())
                .isEqualTo(new Contrast(Method.FULL_FRAME, Method.INSERT));
    }

    @ParameterizedTest
    @EnumSource(names = {"BRICK_VENEER", "STUCCO"})
    void onMasonryNobodyTapesOrBedsAFlange(Cladding masonry) {
        assertThat(work(of(masonry), Method.FULL_FRAME))
                .doesNotContain(
                        "Flashing tape, 6 in.",
                        "Barrier seam tape",
                        "Run the bead behind the flange",
                        "Tape jambs",
                        "Tape the head")
                .anyMatch(name -> name.contains("Sill pan"));
        assertThat(work(of(Cladding.VINYL_SIDING), Method.FULL_FLANGE))
                .contains("Flashing tape, 6 in.", "Run the bead behind the flange", "Tape jambs", "Tape the head");
    }

    /** Trade names of what a job does at openings and buys. */
    private static List<String> work(House house, Method method) {
        HouseTakeoff takeoff = takeoff(house, method);
        Stream<String> steps = takeoff.work().openings().stream()
                .flatMap(opening -> opening.lines().stream())
                .map(line -> line.step())
                .map(LabourStep::tradeName);
        Stream<String> items =
                takeoff.work().materials().stream().map(line -> line.item()).map(Material::tradeName);
        return Stream.concat(steps, items).distinct().toList();
    }

    @ParameterizedTest
    @CsvSource({
        "1950, ALUMINUM, false",
        "1956, ALUMINUM, true",
        "1956, VINYL, true",
        "1975, WOOD, false",
        "1985, WOOD, true",
    })
    @DisplayName(
            "a nailing flange stands on metal and vinyl units from about 1955, seldom on wood before 1980 (common practice)")
    void onlyAFlangeHasFlangeFaults(int year, FrameMaterial material, boolean flange) {
        House house =
                Town.like(Town.house("H1"), year, Cladding.WOOD_LAP, Barrier.BUILDING_PAPER, material, Lap.UNKNOWN);
        Set<String> ids = ids(house, Method.INSERT, LapsByWallTest::old);
        assertThat(ids.contains("flange_unsealed_old")).isEqualTo(flange);
        assertThat(ids.contains("sill_flange_reversed")).isEqualTo(flange);
        // Who has seen the barrier over the sill flange has seen the flange.
        House seen =
                Town.like(Town.house("H1"), year, Cladding.WOOD_LAP, Barrier.BUILDING_PAPER, material, Lap.REVERSED);
        assertThat(ids(seen, Method.INSERT, LapsByWallTest::old)).contains("sill_flange_reversed");
    }

    @ParameterizedTest
    @CsvSource({
        "VINYL_SIDING, VINYL, 1994, true",
        "VINYL_SIDING, WOOD, 1994, false",
        "BRICK_VENEER, VINYL, 1994, false",
        "WOOD_LAP, ALUMINUM, 1975, false",
        "ALUMINUM_SIDING, ALUMINUM, 1950, false",
    })
    void onlyAChannelHasASealOfAChannel(Cladding cladding, FrameMaterial material, int year, boolean channel) {
        House house = Town.like(Town.house("H1"), year, cladding, Barrier.HOUSEWRAP, material, Lap.UNKNOWN);
        assertThat(ids(house, Method.INSERT, LapsByWallTest::old).contains("channel_seal_failed"))
                .isEqualTo(channel);
    }

    @Test
    void whatPassesTheCladdingDiffersByCladding() {
        double[] passes = Arrays.stream(Cladding.values())
                .mapToDouble(cladding -> paths(of(cladding), Method.INSERT).stream()
                        .filter(path -> path.fault().id().equals("head_flap_reversed"))
                        .mapToDouble(LeakPath::passesFirstLine)
                        .sum())
                .toArray();
        assertThat(passes).containsExactly(new double[] {0.25, 0.25, 0.15, 0.15, 0.2, 0.08}, within(1e-12));
    }
}
