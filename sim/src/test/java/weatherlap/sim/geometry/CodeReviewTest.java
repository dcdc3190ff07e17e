package weatherlap.sim.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.code.CodeChange;
import weatherlap.sim.code.CodeReview;
import weatherlap.sim.code.CodeRule;
import weatherlap.sim.code.RoomChange;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Room;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.method.Method;

class CodeReviewTest {
    private static final Assumptions AS_NEW =
            Bundled.ASSUMPTIONS.with(Bundled.ASSUMPTIONS.scenario().with(Choice.ESCAPE_RULE, "as_new"));

    /** In old aluminium 36 × 62 passes today and with a flanged unit, and fails with an insert: 6.74, 6.19 and 5.62 ft² of 5.7. */
    private static final Opening WAY_OUT =
            Measured.frame(36, 62).in(Room.BEDROOM, 36, 120).at(24, 140).opening();

    /** In old aluminium 40 × 66 is a way out by either method. */
    private static final Opening LARGE =
            Measured.frame(40, 66).in(Room.BEDROOM, 36, 120).at(100, 140).opening();

    /**
     * Raised to its stop, the lower sash of 36 × 62 in old aluminium clears 34.5 × (57.75/2 + 0.75 − 1.5) in., a flanged unit
     * 33 × (54.5/2 + 1.25 − 1.5) and an insert 31.25 × (52.25/2 + 1.25 − 1.5).
     */
    @Test
    void aBedroomThatPassesTodayAndFailsWithAnInsertIsLostAsNew() {
        OpeningGeometry insert = GlassTest.geometry(WAY_OUT, Method.INSERT);

        assertThat(insert.existingClear().areaFt2()).isEqualTo(34.5 * 28.125 / 144, within(1e-9));
        assertThat(insert.clear().areaFt2()).isEqualTo(31.25 * 25.875 / 144, within(1e-9));
        assertThat(flags(AS_NEW, Method.INSERT, WAY_OUT)).containsExactly(List.of("escape_lost"));
        assertThat(flags(AS_NEW, Method.FULL_FLANGE, WAY_OUT)).containsExactly(List.of());
    }

    /** IRC 2018 R310.2.5: a replacement of the same operating style that fills the existing frame. */
    @Test
    void theReplacementClauseLetsTheSameStyleStand() {
        assertThat(flags(Bundled.ASSUMPTIONS, Method.INSERT, WAY_OUT)).containsExactly(List.of("escape_relieved"));
    }

    /** The same clause: another style must open as far as the old one did. */
    @Test
    void theReplacementClauseDoesNotLetAnotherStyleThatOpensLess() {
        Opening fixed = Measured.frame(36, 62)
                .opens(Operation.DOUBLE_HUNG, Operation.PICTURE)
                .in(Room.BEDROOM, 36, 120)
                .at(24, 140)
                .opening();
        Opening opensFarther = Measured.frame(34, 62)
                .opens(Operation.SLIDER, Operation.DOUBLE_HUNG)
                .in(Room.BEDROOM, 36, 120)
                .at(24, 140)
                .opening();

        assertThat(flags(Bundled.ASSUMPTIONS, Method.INSERT, fixed)).containsExactly(List.of("escape_lost"));
        assertThat(flags(Bundled.ASSUMPTIONS, Method.INSERT, opensFarther)).containsExactly(List.of("escape_fails"));
    }

    /** IRC R310.1 asks a sleeping room for one opening. */
    @Test
    void aBedroomNeedsOneWayOutNotAll() {
        assertThat(flags(AS_NEW, Method.INSERT, in("bed", WAY_OUT), in("bed", LARGE)))
                .containsExactly(List.of(), List.of());
        assertThat(flags(AS_NEW, Method.INSERT, in("bed", WAY_OUT), in("den", LARGE)))
                .containsExactly(List.of("escape_lost"), List.of());
    }

    /** So that a plan that keeps the full flange there alone keeps the room. */
    @Test
    void aRoomThatLosesEveryWayOutIsClosedAtOneOfThem() {
        assertThat(flags(AS_NEW, Method.INSERT, in("bed", WAY_OUT), in("bed", WAY_OUT)))
                .containsExactly(List.of("escape_lost"), List.of());
    }

    @Test
    void withoutAnIdEachBedroomWindowIsARoomOfItsOwn() {
        assertThat(flags(AS_NEW, Method.INSERT, WAY_OUT, LARGE)).containsExactly(List.of("escape_lost"), List.of());
    }

    /** IRC R303.1: of 120 ft² of floor, 8 % and 4 %: an insert of 36 × 60 shows 10.12 ft² of glass. */
    @ParameterizedTest
    @CsvSource({"126, false", "127, true"})
    void lightIsAShareOfTheFloor(double floorFt2, boolean lost) {
        Opening living = Measured.frame(36, 60).in(Room.LIVING, 30, floorFt2).opening();

        assertThat(GlassTest.geometry(living, Method.INSERT).replaced().glassFt2())
                .isEqualTo(29 * 50.25 / 144, within(1e-12));
        assertThat(flags(AS_NEW, Method.INSERT, in("living", living)).get(0).contains("light_lost"))
                .isEqualTo(lost);
    }

    @Test
    void windowsOfARoomMakeUpItsLightTogether() {
        Opening half = Measured.frame(36, 60).in(Room.LIVING, 30, 240).opening();

        assertThat(flags(AS_NEW, Method.INSERT, in("a", half), in("b", half)))
                .containsExactly(List.of("light_fails", "vent_fails"), List.of("light_fails", "vent_fails"));
        assertThat(flags(AS_NEW, Method.INSERT, in("a", half), in("a", half))).containsExactly(List.of(), List.of());
    }

    /** 453 of the demo's 578 windows were flagged where nobody knew what else lit the room. */
    @Test
    void withoutIdOrFloorNothingIsSaidOfLightAndAir() {
        Opening small = Measured.frame(12, 12).in(Room.LIVING, 30, 300).opening();
        Opening noFloor = Measured.frame(12, 12).opening();

        assertThat(flags(AS_NEW, Method.INSERT, small, in("a", noFloor))).containsExactly(List.of(), List.of());
    }

    @Test
    void roomsThatFallShortAreCountedBeforeAndAfter() {
        Opening living = Measured.frame(36, 60).in(Room.LIVING, 30, 127).opening();
        Opening dark = Measured.frame(12, 12).in(Room.KITCHEN, 30, 300).opening();
        List<RoomChange> light =
                review(AS_NEW, in("living", living), in("kitchen", dark)).get(Method.INSERT).rooms().stream()
                        .filter(room -> room.change().rule() == CodeRule.LIGHT)
                        .toList();

        assertThat(light).hasSize(2);
        assertThat(RoomChange.shortBefore(light)).isEqualTo(1);
        assertThat(RoomChange.shortAfter(light)).isEqualTo(2);
    }

    /** IRC 2018 R308.4.5 (60 in.), R308.4.6 and .7 (36 in.): the glass of an insert stands some inches over its clear opening. */
    @ParameterizedTest
    @CsvSource({
        "BATH, 40, wet_glazing_check",
        "BATH, 60, ''",
        "STAIR, 20, stair_glazing_check",
        "STAIR, 36, ''",
        "LIVING, 20, ''"
    })
    void glassOfBathsAndStairsIsAskedForHigher(Room room, double sillOverFloorIn, String flag) {
        Opening opening =
                Measured.frame(24, 36).in(room, sillOverFloorIn, 50).at(24, 60).opening();

        assertThat(flags(AS_NEW, Method.INSERT, opening)).containsExactly(flag.isEmpty() ? List.of() : List.of(flag));
    }

    @Test
    void aBathWhoseSillNobodyMeasuredIsNotPassed() {
        Opening bath = Measured.frame(24, 24)
                .in(Room.BATH)
                .opens(Operation.AWNING, Operation.AWNING)
                .at(24, 80)
                .opening();

        assertThat(flags(AS_NEW, Method.INSERT, bath)).containsExactly(List.of("wet_glazing_check"));
    }

    /** IRC R312.2: more than 72 in. over grade and less than 24 in. over the floor. */
    @Test
    void aFixedUnitUpstairsThatIsMadeToOpenAsksForAGuard() {
        MadeOpening fixed = Measured.frame(36, 60)
                .opens(Operation.PICTURE, Operation.CASEMENT)
                .at(24, 130);

        assertThat(flags(
                                AS_NEW,
                                Method.FULL_FLANGE,
                                fixed.in(Room.LIVING, 20, 120).opening())
                        .get(0))
                .contains("fall_lost");
        assertThat(flags(
                                AS_NEW,
                                Method.FULL_FLANGE,
                                fixed.in(Room.LIVING, 25, 120).opening())
                        .get(0))
                .doesNotContain("fall_lost");
    }

    private static Opening in(String room, Opening opening) {
        return opening.at(opening.place().inRoom(room, opening.place().floorAreaFt2()));
    }

    private static List<List<String>> flags(Assumptions assumptions, Method method, Opening... openings) {
        return review(assumptions, openings).get(method).byOpening().stream()
                .map(changes -> changes.stream()
                        .map(CodeChange::flag)
                        .flatMap(Optional::stream)
                        .toList())
                .toList();
    }

    private static Map<Method, CodeReview> review(Assumptions assumptions, Opening... openings) {
        Elevation wall = Measured.wall(40, 18, 4, 150, List.of(openings));
        Map<Method, List<OpeningGeometry>> geometries = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            geometries.put(
                    method,
                    Stream.of(openings)
                            .map(o -> OpeningGeometry.of(
                                    Measured.house(Cladding.VINYL_SIDING, wall), wall, o, method, assumptions))
                            .toList());
        }
        return CodeReview.of(geometries, assumptions.scenario());
    }
}
