package weatherlap.sim.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.code.CodeCheck;
import weatherlap.sim.code.CodeCheck.Verdict;
import weatherlap.sim.code.LiftLimit;
import weatherlap.sim.code.ResidentialCode;

/** Values printed elsewhere or worked by hand, each with where it comes from. */
class PublishedGeometryTest {
    private static final double CARTRIDGE_IN3 = 10.1 * 231 / 128;

    /** Worked from the volume of a 10.1 fl oz cartridge, 18.227 in³ (1 US fl oz = 231/128 in³, exact). */
    @ParameterizedTest
    @CsvSource({"0.25, 30.94", "0.375, 13.75", "0.5, 7.74"})
    void aCartridgeYieldsItsVolumeInRoundBeads(double widthIn, double feet) {
        assertThat(CARTRIDGE_IN3 / Quantities.beadIn2(widthIn) / 12).isEqualTo(feet, within(0.006));
    }

    /** Width × height and verdict as published in building departments' handouts on escape openings (IRC R310.2). */
    @ParameterizedTest
    @CsvSource({
        "28, 30, 5.83, PASSES",
        "21, 32, 4.67, FAILS",
        "24, 20, 3.33, FAILS",
        "31, 24, 5.17, FAILS",
        "29, 17, 3.42, FAILS"
    })
    void escapeOpeningsAreJudgedAsInTheHandouts(double widthIn, double heightIn, double areaFt2, Verdict verdict) {
        CodeCheck check = ResidentialCode.escape(widthIn, heightIn, false, OptionalDouble.of(40));

        assertThat(new Rect(0, 0, widthIn, heightIn).areaFt2()).isEqualTo(areaFt2, within(0.005));
        assertThat(check.verdict()).isEqualTo(verdict);
    }

    /** IRC R310.2.1: 5.7 ft² are 820.8 in², so 20 in. of width need 41.04 of height, and 24 of height need 34.2 of width. */
    @ParameterizedTest
    @CsvSource({
        "20, 41.04, PASSES",
        "20, 41.03, FAILS",
        "34.2, 24, PASSES",
        "34.19, 24, FAILS",
        "40, 23.9, FAILS",
        "19.9, 60, FAILS"
    })
    void theLeastEscapeOpeningPasses(double widthIn, double heightIn, Verdict verdict) {
        assertThat(ResidentialCode.escape(widthIn, heightIn, false, OptionalDouble.of(44))
                        .verdict())
                .isEqualTo(verdict);
    }

    /** IRC R310.2.1 exception: 5.0 ft² at grade; R310.2.2: sill at most 44 in. over the floor. */
    @Test
    void gradeAndSillCount() {
        assertThat(ResidentialCode.escape(30, 24, true, OptionalDouble.of(44)).verdict())
                .isEqualTo(Verdict.PASSES);
        assertThat(ResidentialCode.escape(30, 24, false, OptionalDouble.of(44)).verdict())
                .isEqualTo(Verdict.FAILS);
        assertThat(ResidentialCode.escape(30, 30, true, OptionalDouble.of(44.1)).verdict())
                .isEqualTo(Verdict.FAILS);
        assertThat(ResidentialCode.escape(30, 30, true, OptionalDouble.empty()).verdict())
                .isEqualTo(Verdict.OPEN);
    }

    /** IRC R308.4.3: more than 9 ft², bottom below 18 in., top above 36 in. */
    @Test
    void safetyGlazingNeedsAllOfItsMeasures() {
        assertThat(ResidentialCode.needsSafetyGlazing(9.1, 17.9, 60)).isTrue();
        assertThat(ResidentialCode.needsSafetyGlazing(9.0, 17.9, 60)).isFalse();
        assertThat(ResidentialCode.needsSafetyGlazing(9.1, 18.0, 60)).isFalse();
        assertThat(ResidentialCode.needsSafetyGlazing(9.1, 0, 36)).isFalse();
    }

    /** EN 572-1: glass of 2500 kg/m³. A 6 mm pane weighs 3.07 lb/ft²; two of 3 mm at 36 × 60 in. weigh 46 lb (worked). */
    @Test
    void glassWeighsWhatItsThicknessSays() {
        assertThat(UnitWeight.glassLb(1, 1)).isEqualTo(0.512, within(0.0005));
        assertThat(UnitWeight.glassLb(1, 6)).isEqualTo(3.07, within(0.005));
        assertThat(UnitWeight.glassLb(15, 2 * 3)).isEqualTo(46.08, within(0.01));
    }

    /** Worked from the multipliers of the NIOSH manual (94-110), sagittal lifts at low frequency. */
    @ParameterizedTest
    @CsvSource({
        "10, 30, 10, 1.00, 51.00",
        "20, 30, 10, 1.00, 25.50",
        "15, 30, 20, 0.90, 27.85",
        "18, 6, 36, 0.95, 19.20"
    })
    void liftingLimitsAreThoseOfTheManual(
            double reachIn, double heightIn, double travelIn, double coupling, double limitLb) {
        assertThat(LiftLimit.recommendedLb(reachIn, heightIn, travelIn, 0, 1, coupling))
                .isEqualTo(limitLb, within(0.005));
    }

    /** Worked by hand: 9 screws on 36 in. and 15 on 60 in., twice. */
    @Test
    void aFlangeOf36By60Takes48Screws() {
        assertThat(new Fastening(36, 60, 4, 2).screws()).hasSize(48);
    }

    /** Worked by hand at 36 × 60: W + 12 = 48 in. at the sill; 2(H + 10) + W + 16 = 192 in. at jambs and head. */
    @Test
    void tapeFor36By60IsTwentyFeet() {
        Flashing flashing = Flashing.of(36, 60, 6, 5, 8);

        assertThat(flashing.sillIn()).isEqualTo(48);
        assertThat(2 * flashing.jambIn() + flashing.headIn()).isEqualTo(192);
        assertThat(flashing.lengthIn()).isEqualTo(240);
    }

    /** Worked by hand at 36 × 60 with 6 in. at head and legs, 8 at the sill, 4 more at the ends: 1384 in². */
    @Test
    void cappingFor36By60TakesNineAndAHalfSquareFeetOfCoil() {
        assertThat(Capping.of(36, 60, 6, 8, 4).areaIn2() / 144).isEqualTo(9.61, within(0.005));
    }

    /** Worked by hand: 4.5 − (3.25 − 1.375). */
    @Test
    void theReturnOfATwoByFourWallIsTwoAndFiveEighthsDeep() {
        assertThat(CutBack.returnDepthIn(4.5, 3.25, 1.375)).isEqualTo(2.625);
    }

    /** Worked by hand: 32 × 54 with jambs 1/4 in. out of plumb. */
    @Test
    void jambsOutOfPlumbShowInTheDiagonals() {
        double differenceIn = Math.hypot(32.25, 54) - Math.hypot(31.75, 54);

        assertThat(differenceIn).isEqualTo(0.255, within(0.0005));
        assertThat(Squareness.outOfPlumbIn(32, 54, differenceIn)).isEqualTo(0.25, within(1e-5));
    }

    /** Trade manual: a square (100 ft²) takes 12 panels of double 4 in. × 12 ft 6 in. and 10 of double 5 in. × 12 ft. */
    @ParameterizedTest
    @CsvSource({"8, 150, 12", "10, 144, 10"})
    void aSquareOfSidingTakesThePanelsOfTheManual(double exposureIn, double lengthIn, int panels) {
        SidingLayout wall = new SidingLayout(400, 240, exposureIn, lengthIn);

        assertThat(panels * wall.panel(0, 0).areaFt2()).isEqualTo(100, within(1e-9));
    }
}
