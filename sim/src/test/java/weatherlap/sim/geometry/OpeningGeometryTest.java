package weatherlap.sim.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Product;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.geometry.Fastening.Fastener;
import weatherlap.sim.geometry.Fastening.Turn;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Readings;
import weatherlap.sim.method.Method;

/** One opening, both methods, worked by hand from the bundled sightlines. */
class OpeningGeometryTest {
    private static final Opening OPENING = Measured.frame(36, 60).opening();

    @Test
    void everyDriverOfAnOpeningHasAQuantityAndNoOtherHas() {
        for (Method method : Method.values()) {
            double[] counted = GlassTest.geometry(OPENING, method).quantities().counted();
            for (Driver driver : Driver.values()) {
                double quantity = counted[driver.ordinal()];
                assertThat(driver.level() == Driver.Level.OPENING ? quantity >= 0 : Double.isNaN(quantity))
                        .as("%s, %s", method, driver)
                        .isTrue();
            }
        }
    }

    @Test
    void aFullFlangeUnitIsTapedScrewedAndCutBackToButNotCapped() {
        var quantities = GlassTest.geometry(OPENING, Method.FULL_FLANGE).quantities();

        assertThat(quantities.of(Driver.FASTENER)).isEqualTo(48);
        assertThat(quantities.of(Driver.TAPE_FT)).isEqualTo(20);
        assertThat(quantities.of(Driver.RETURN_FT)).isEqualTo(2 * 2 * (36 + 60) / 12.0);
        assertThat(quantities.of(Driver.PERIMETER_FT)).isEqualTo(16);
        assertThat(quantities.of(Driver.JAMB_FT)).isEqualTo(10);
        assertThat(quantities.of(Driver.CAPPING_FT)).isZero();
        assertThat(quantities.of(Driver.CAPPING_FT2)).isZero();
        // 3/8 in. round bead on two perimeters less the open sill; 36.5 × 60.5 less 36 × 60, 2 in. deep, a third filled
        assertThat(quantities.of(Driver.SEALANT_IN3))
                .isEqualTo((2 * 192 - 36) * Math.PI / 4 * 0.375 * 0.375, within(1e-9));
        assertThat(quantities.of(Driver.FOAM_IN3)).isEqualTo(48.25 * 2 * 0.33, within(1e-9));
    }

    @Test
    void anInsertIsCappedButNeitherTapedNorScrewedAlongAFlange() {
        var quantities = GlassTest.geometry(OPENING, Method.INSERT).quantities();

        assertThat(quantities.of(Driver.CAPPING_FT)).isEqualTo(16);
        assertThat(quantities.of(Driver.CAPPING_FT2)).isEqualTo(9.61, within(0.005));
        assertThat(quantities.of(Driver.TAPE_FT)).isZero();
        assertThat(quantities.of(Driver.RETURN_FT)).isZero();
        assertThat(quantities.of(Driver.FASTENER)).isZero();
        assertThat(quantities.of(Driver.UNITED_INCH)).isEqualTo(34.25 + 58.25);
    }

    @Test
    void ordersComeFromTheSmallestReadingAndAnInsertGivesWayToLeaningJambs() {
        Opening read = Measured.frame(36, 60)
                .read(new Readings(35.9, 36, 36, 60, 59.95, 60, OptionalDouble.of(70.0), OptionalDouble.of(69.744)))
                .opening();
        OrderSize flanged = GlassTest.geometry(read, Method.FULL_FLANGE).order();
        OrderSize insert = GlassTest.geometry(read, Method.INSERT).order();

        assertThat(flanged.widthIn()).isEqualTo(35.875);
        assertThat(flanged.heightIn()).isEqualTo(59.875);
        // d = 0.256 in.: x = 0.256 √(35.9² + 59.95²)/(2 · 35.9) = 0.249; 35.9 − 1.5 − 0.249 − 0.25 = 33.90
        assertThat(insert.squareness().outOfPlumbIn()).isEqualTo(0.249, within(0.0005));
        assertThat(insert.widthIn()).isEqualTo(33.875);
        assertThat(insert.heightIn()).isEqualTo(58.125);
        assertThat(insert.squareness().withinTolerance()).isFalse();
    }

    @Test
    void mulledUnitsAreOneAssemblyFlangedAndSeveralInserts() {
        Opening twin = Measured.frame(72, 60).mulled(2).opening();
        OrderSize flanged = GlassTest.geometry(twin, Method.FULL_FLANGE).order();
        OpeningGeometry inserts = GlassTest.geometry(twin, Method.INSERT);

        assertThat(flanged.widthIn()).isEqualTo(35.75);
        assertThat(flanged.overallWidthIn()).isEqualTo(72);
        assertThat(inserts.order().widthIn()).isEqualTo(34);
        assertThat(inserts.replaced().units()).hasSize(2);
        assertThat(inserts.replaced().lites()).hasSize(4);
        assertThat(inserts.quantities().of(Driver.UNIT)).isEqualTo(2);
        assertThat(inserts.quantities().of(Driver.CORNER)).isEqualTo(8);
    }

    @Test
    void aSingleHungThatBecomesACasementIsLaidOutAsOne() {
        Opening changed = Measured.frame(36, 60)
                .opens(Operation.SINGLE_HUNG, Operation.CASEMENT)
                .opening();
        OpeningGeometry geometry = GlassTest.geometry(changed, Method.FULL_FLANGE);

        assertThat(geometry.existing().lites()).hasSize(2);
        assertThat(geometry.replaced().lites()).hasSize(1);
        assertThat(geometry.clear().widthIn()).isEqualTo(36 - 3 - 3);
        assertThat(geometry.clear().heightIn()).isEqualTo(60 - 2.75);
    }

    @Test
    void glassIsLostAtEverySideAndTheOldFrameStaysInSight() {
        OpeningGeometry insert = GlassTest.geometry(OPENING, Method.INSERT);

        // widths 36 − 2.75 and 34.25 − 5.25; heights 60 − 4.25 and 58.25 − 8
        assertThat(insert.existing().glassWidthIn()).isEqualTo(33.25);
        assertThat(insert.replaced().glassWidthIn()).isEqualTo(29);
        assertThat(insert.existing().glassHeightIn()).isEqualTo(55.75);
        assertThat(insert.replaced().glassHeightIn()).isEqualTo(50.25);
        assertThat(insert.glassLostFt2()).isEqualTo((33.25 * 55.75 - 29 * 50.25) / 144, within(1e-12));
        assertThat(insert.replaced().areaIn2(Part.OLD_FRAME)).isEqualTo(36 * 60 - 34.5 * 58.5, within(1e-9));
    }

    @Test
    void cornersComeFirstThenMiddlesThenEveryHole() {
        assertThat(GlassTest.geometry(OPENING, Method.FULL_FLANGE).fasteners())
                .extracting(Fastener::turn)
                .isSorted()
                .startsWith(Turn.CORNER)
                .endsWith(Turn.THE_REST);
        assertThat(new Fastening(36, 60, 4, 2).screws())
                .filteredOn(screw -> screw.turn() == Turn.CORNER)
                .hasSize(8);
    }

    @Test
    void aUnitThatDoesNotFitShowsNoGlass() {
        Opening tiny = Measured.frame(8, 8).mulled(4).opening();
        OpeningGeometry insert = GlassTest.geometry(tiny, Method.INSERT);

        assertThat(insert.order().fits()).isFalse();
        assertThat(insert.replaced().glassIn2()).isZero();
        assertThat(insert.clear().opens()).isFalse();
    }

    /** For openings of every size, in old frames of every material. */
    @Test
    void theBundledRowsKeepInsertsBelowFullFlangeUnits() {
        for (FrameMaterial material : FrameMaterial.values()) {
            assertThat(SightlineOrder.exceptions(Bundled.with(material))).isEmpty();
        }
    }

    @Test
    void rowsThatLetAnInsertShowMoreAreTold() {
        List<Sightline> slim = Bundled.ASSUMPTIONS.sightlines().stream()
                .map(OpeningGeometryTest::slimInsert)
                .toList();
        Assumptions assumptions = new Assumptions(
                List.of(), List.of(), List.of(), slim, List.of(), List.of(), Bundled.ASSUMPTIONS.scenario());

        assertThat(SightlineOrder.exceptions(assumptions)).containsExactly(Operation.PICTURE);
    }

    private static Sightline slimInsert(Sightline row) {
        return row.product() == Product.INSERT && row.operation() == Operation.PICTURE
                ? new Sightline(
                        row.product(),
                        row.material(),
                        row.operation(),
                        0.5,
                        0.5,
                        0.5,
                        0,
                        0.5,
                        0.5,
                        0.5,
                        0.25,
                        0.25,
                        3,
                        row.origin())
                : row;
    }
}
