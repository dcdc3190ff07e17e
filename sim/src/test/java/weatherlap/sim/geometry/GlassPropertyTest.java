package weatherlap.sim.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.geom.Geometry;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.geometry.Glass.Piece;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;

class GlassPropertyTest {
    private static final double NOISE = 1e-7;

    @Provide
    Arbitrary<Opening> openings() {
        return Openings.any();
    }

    @Property(tries = 2000)
    void glassAndWhatHidesItMakeTheOpening(
            @ForAll("openings") Opening opening, @ForAll FrameMaterial material, @ForAll Method method) {
        Assumptions assumptions = Bundled.with(material);
        OrderSize order = OrderSize.of(opening, method, assumptions);

        for (Glass glass : List.of(Glass.existing(opening, assumptions), Glass.replaced(opening, order, assumptions))) {
            assertThat(Arrays.stream(Part.values()).mapToDouble(glass::areaIn2).sum())
                    .isEqualTo(glass.hole().areaIn2(), within(NOISE));
            assertThat(glass.lites().stream().mapToDouble(Rect::areaIn2).sum())
                    .isEqualTo(glass.glassIn2(), within(NOISE));
        }
    }

    /** The union of the pieces has the area of the hole and lies in it: with equal sums, no two pieces overlap. */
    @Property(tries = 500)
    void thePiecesCoverTheHoleOnceAsAnotherLibrarySeesThem(
            @ForAll("openings") Opening opening, @ForAll FrameMaterial material, @ForAll Method method) {
        Assumptions assumptions = Bundled.with(material);
        Glass glass = Glass.replaced(opening, OrderSize.of(opening, method, assumptions), assumptions);
        Geometry union = Jts.union(glass.pieces().stream().map(Piece::rect).toList());

        assertThat(union.getArea()).isEqualTo(glass.hole().areaIn2(), within(1e-6));
        assertThat(Jts.of(glass.hole()).buffer(1e-6).covers(union)).isTrue();
    }

    @Property(tries = 4000)
    void anInsertNeverShowsMoreGlassThanAFullFlangeUnit(
            @ForAll("openings") Opening opening, @ForAll FrameMaterial material) {
        Assumptions assumptions = Bundled.with(material);

        assertThat(glassIn2(opening, Method.INSERT, assumptions))
                .isLessThanOrEqualTo(glassIn2(opening, Method.FULL_FLANGE, assumptions) + NOISE);
    }

    @Property
    void aFullFlangeUnitOfMoreGlassAreaNeedsALargerOpening(
            @ForAll("openings") Opening opening, @ForAll @DoubleRange(min = 0.25, max = 20) double moreIn) {
        Opening wider = Measured.frame(
                        Math.min(144, opening.frame().widthIn() + moreIn),
                        opening.frame().heightIn())
                .opens(opening.operation(), opening.newOperation())
                .mulled(opening.units())
                .of(opening.frame().material())
                .opening();

        assertThat(glassIn2(wider, Method.FULL_FLANGE, Bundled.ASSUMPTIONS))
                .isGreaterThanOrEqualTo(glassIn2(opening, Method.FULL_FLANGE, Bundled.ASSUMPTIONS) - NOISE);
    }

    @Property(tries = 2000)
    void anOrderIsNeverLargerThanItsOpeningAndAWholeNumberOfSteps(
            @ForAll("openings") Opening opening, @ForAll FrameMaterial material, @ForAll Method method) {
        OrderSize order = OrderSize.of(opening, method, Bundled.with(material));

        assertThat(order.widthIn()).isLessThanOrEqualTo(order.openingWidthIn());
        assertThat(order.heightIn()).isLessThanOrEqualTo(order.openingHeightIn());
        assertThat(order.widthIn() * 8).isEqualTo(Math.rint(order.widthIn() * 8));
        assertThat(order.heightIn() * 8).isEqualTo(Math.rint(order.heightIn() * 8));
        if (method == Method.FULL_FLANGE) {
            assertThat(order.overallWidthIn()).isLessThanOrEqualTo(order.openingWidthIn());
        }
    }

    /** An insert's clear opening is no larger either. */
    @Property(tries = 2000)
    void anInsertNeverOpensFurtherThanAFullFlangeUnit(
            @ForAll("openings") Opening opening, @ForAll FrameMaterial material) {
        Assumptions assumptions = Bundled.with(material);
        ClearOpening insert =
                GlassTest.geometry(opening, Method.INSERT, assumptions).clear();
        ClearOpening flanged =
                GlassTest.geometry(opening, Method.FULL_FLANGE, assumptions).clear();

        assertThat(insert.rect().areaIn2()).isLessThanOrEqualTo(flanged.rect().areaIn2() + NOISE);
    }

    @Property
    void theTreesSumToTheNumbersTheyExplain(
            @ForAll("openings") Opening opening, @ForAll FrameMaterial material, @ForAll Method method) {
        Assumptions assumptions = Bundled.with(material);
        OpeningGeometry geometry = GlassTest.geometry(opening, method, assumptions);

        assertThat(Explanation.replaced(geometry, assumptions).glass().value())
                .isEqualTo(geometry.replaced().glassFt2(), within(NOISE));
        assertThat(Explanation.existing(geometry, assumptions).glass().value())
                .isEqualTo(geometry.existing().glassFt2(), within(NOISE));
        assertThat(Explanation.replaced(geometry, assumptions).clearArea().value())
                .isEqualTo(geometry.clear().areaFt2(), within(NOISE));
        assertThat(Explanation.glassLost(geometry, assumptions).value())
                .isEqualTo(geometry.glassLostFt2(), within(NOISE));
    }

    private static double glassIn2(Opening opening, Method method, Assumptions assumptions) {
        return Glass.replaced(opening, OrderSize.of(opening, method, assumptions), assumptions)
                .glassIn2();
    }
}
