package weatherlap.datasets.assumptions;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.portfolio.StandardJob;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.work.WorkTakeoff;

/** Windows that two people do in eight hours at the house, by the bundled rows, against what is known of such crews. */
class WindowsADayTest {
    private static final double EIGHT_HOURS = 480;
    private static final Assumptions MILD = KindsOfJob.at(70);

    @TempDir
    private Path folder;

    private static WorkTakeoff standard(Method method) {
        return HouseTakeoff.work(StandardJob.house(), method, MILD);
    }

    /** Validation: a trade magazine on the size of crews, "eight to 12 units in a day" by a good crew of two; a contractor's page: 8 to 10. */
    @Test
    void aGoodCrewSetsEightToTwelveInserts() {
        assertThat(standard(Method.INSERT).openingsADay(EIGHT_HOURS)).isBetween(8.0, 12.0);
    }

    /** Validation, weak: a public guide puts full-frame work without siding taken down at 4 to 6 a day. */
    @Test
    void andFourToSixFullFrame() {
        assertThat(standard(Method.FULL_FRAME).openingsADay(EIGHT_HOURS)).isBetween(4.0, 6.0);
    }

    /** Judgement: 3 to 5 a day with siding taken down and put back; none was found in print. */
    @Test
    void andThreeToFiveFullFlange() {
        assertThat(standard(Method.FULL_FLANGE).openingsADay(EIGHT_HOURS)).isBetween(3.0, 5.0);
    }

    /** Validation, weak: public guides put an insert at 45 to 90 minutes of a crew of two at the window; a tenth is left for either end. */
    @Test
    void anInsertTakesThreeQuartersOfAnHourOrMoreAtTheWindow() {
        double crewMinutes = standard(Method.INSERT).openings().get(0).meanMinutes() / 2;
        assertThat(crewMinutes).isBetween(0.9 * 45, 1.1 * 90);
    }

    /** Judgement: what a job, its days and its walls need once is a tenth to a seventh of an easy insert's time, not half of it. */
    @Test
    void whatAJobPaysOnceDoesNotOutweighItsWindows() {
        WorkTakeoff work = standard(Method.INSERT);
        double own = work.openings().stream().mapToDouble(o -> o.meanMinutes()).sum();
        double all = work.meanMinutes() - work.travel().value();
        assertThat((all - own) / all).isBetween(0.1, 1.0 / 6);
    }

    /** Validation: a trade magazine, a metal frame more than doubles the tear-out of an insert. */
    @Test
    void aMetalFrameMoreThanDoublesTheTearOut() {
        assertThat(tearOut(kind("existing_material=aluminum"))).isGreaterThan(2 * tearOut(StandardJob.house()));
    }

    private static double tearOut(House house) {
        return LabourLine.meanMinutes(HouseTakeoff.work(house, Method.INSERT, MILD).lines().stream()
                .filter(line -> line.step().id().startsWith("in_sashes")
                        || line.step().id().equals("in_metal_bars"))
                .toList());
    }

    private House kind(String changes) {
        return new KindsOfJob(folder).house(changes);
    }

    private record Kind(String name, String changes, double temperatureF, String known) {}

    private static Stream<Kind> kinds() {
        String boards = "cladding=wood_lap & course_exposure_in=6 & panel_length_in=144";
        String brick = "cladding=brick_veneer & course_exposure_in= & panel_length_in=";
        return Stream.of(
                new Kind("the standard job", "", 70, "8 to 12 inserts, 4 to 6 full-frame, 3 to 5 full-flange"),
                new Kind("aluminum frames", "existing_material=aluminum", 70, "an insert's tear-out more than doubles"),
                new Kind("vinyl frames", "existing_material=vinyl", 70, "faster: no capping"),
                new Kind(
                        "second story",
                        "storeys=2 & eave_height_ft=18 & sill_height_in=138",
                        70,
                        "15 to 25 % more outside"),
                new Kind(
                        "third story",
                        "storeys=3 & eave_height_ft=27 & sill_height_in=246",
                        70,
                        "35 to 50 % more outside"),
                new Kind(
                        "sash weights",
                        "year_built=1930 & lead_test=negative",
                        70,
                        "slower; by how much was not found"),
                new Kind("plaster returns", "interior_return=plaster", 70, "slower where returns are cut"),
                new Kind("lead-safe work", "year_built=1965", 70, "slower; by how much was not found"),
                new Kind("wood boards", boards, 70, "slower than panels that unlock"),
                new Kind("brick veneer", brick, 70, "no siding to take down, a joint to cut and to seal"),
                new Kind("rotten frames", "frame_condition=rotten", 70, "an hour or more each"),
                new Kind("20 °F", "", 20, "5 to 12 % slower (NECA) or 1.8 times (Thomas), cold steps only"));
    }

    /** {@code sim/README.md} shows these; where it does not, the failure shows the lines to paste. */
    @Test
    void theTableOfTwelveKindsOfJobStandsInTheReadme() throws IOException {
        String table = kinds().map(this::row).collect(Collectors.joining());
        assertThat(Files.readString(Path.of("../sim/README.md"))).contains(table);
    }

    private String row(Kind kind) {
        House house = kind(kind.changes());
        Assumptions assumptions = KindsOfJob.at(kind.temperatureF());
        String days = Stream.of(Method.values())
                .map(method -> method.isOpenTo(house.cladding())
                        ? String.format(
                                Locale.ROOT,
                                "%.1f",
                                HouseTakeoff.work(house, method, assumptions).openingsADay(EIGHT_HOURS))
                        : "–")
                .collect(Collectors.joining(" | "));
        return "| %s | %s | %s |%n".formatted(kind.name(), days, kind.known()).replace(System.lineSeparator(), "\n");
    }
}
