package weatherlap.charts.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.jfree.data.xy.XYSeries;
import org.junit.jupiter.api.Test;
import weatherlap.charts.Samples;
import weatherlap.charts.Svg;
import weatherlap.charts.drawing.WallRose;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Marks;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.Rose;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Spread;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/** What the charts of a comparison hold and say, before they are drawn. */
class ChartDataTest {

    @Test
    void glassLostNamesBothMediansAndTheGroupThatDiffersMost() {
        assertThat(Samples.glassLost().message())
                .isEqualTo(
                        "Of today\u2019s glass the insert takes 24.3%, full-flange 13.9% (medians of 812 openings, all "
                                + "openings). The methods differ most for glass under 6 ft²: 34.0% against 21.0%.");
        assertThat(Samples.glassLost().axis().getLabel()).contains("% of the existing glass");
    }

    @Test
    void glassGainedWidensTheAxisBelowZero() {
        GlassLost gain = new GlassLost(
                Contrast.USUAL,
                "one",
                List.of(new GlassLost.Group(
                        "all", 1, new Pair<>(new Spread(-0.05, -0.02, 0.01), new Spread(0.1, 0.1, 0.1)))));

        assertThat(gain.axis().getLowerBound()).isLessThanOrEqualTo(-0.05);
        assertThat(gain.axis().getUpperBound()).isGreaterThanOrEqualTo(0.1);
    }

    @Test
    void costPartsAreStackedEndToEndUpToTheTotal() {
        CostStack stack = Samples.costStack();
        List<RowAxis.Bar> bars = stack.bars(Method.INSERT);

        assertThat(bars.get(0).from()).isZero();
        assertThat(IntStream.range(1, bars.size()))
                .allSatisfy(i ->
                        assertThat(bars.get(i).from()).isEqualTo(bars.get(i - 1).to()));
        assertThat(bars.get(bars.size() - 1).to())
                .isEqualTo(stack.total(Method.INSERT))
                .isEqualTo(13690);
        assertThat(stack.axis().getLabel()).isEqualTo("USD per house");
        assertThat(stack.message()).contains("insert comes to $13,690", "labour $2,430");
    }

    @Test
    void leakRoseNamesTheWorstAndTheBestBearing() {
        assertThat(Samples.leakRose().message())
                .contains("insert from 11.0% on walls that face south to 24.0% facing northeast");
        assertThat(Samples.leakRose().curve(Method.FULL_FLANGE).rays())
                .hasSize(8)
                .contains(new Rose.Ray(45, 0.24 * 0.4));
    }

    @Test
    void exposureRoseSaysItsUnit() {
        assertThat(Samples.exposureRose().message()).contains("L/m² a year", "face north take the most");
        assertThat(Svg.parse(Samples.exposureRose().svg()).texts()).anyMatch(text -> text.startsWith("L/m² a year"));
    }

    /** By hand: the rays go from 100 − 80 to 100 + 80, so that the least is a ninth of the most. */
    @Test
    void wallRoseNamesTheWettestAndTheDriestSide() {
        assertThat(Samples.wallRose().message())
                .isEqualTo(
                        "Here the wind drives most rain at walls that face south, and least at walls that face north "
                                + "(11% of the most).");
        assertThat(new WallRose(List.of(), List.of(90.0)).message()).isEqualTo("There is no wind-driven rain to show.");
    }

    @Test
    void costAgainstRiskCountsTheQuadrants() {
        CostRisk chart = new CostRisk(
                Contrast.USUAL,
                "4 houses",
                "cost",
                "chance of a leak",
                List.of(
                        house("a", "vinyl", 100, -0.1),
                        house("b", "vinyl", 200, -0.2),
                        house("c", "wood", -50, -0.1),
                        house("d", "brick", 10, 0.1)));

        assertThat(chart.message())
                .startsWith(
                        "Of 4 houses, full-flange costs more and leaks less in 2, costs less and leaks less in 1; the "
                                + "insert leaks no more and costs less in 1, leaks no more and costs no less in 0.")
                .endsWith("The median differences are +$55 and \u221210.0 percentage points.");
        assertThat(chart.byCategory().keySet()).containsExactly("vinyl", "brick", "wood");
        assertThat(chart.costAxis().getLabel()).endsWith("full-flange less insert, USD \u2192");
    }

    @Test
    void whoGainsIsCountedByQuadrantAndEveryDotHasItsPlace() {
        BothSides chart = new BothSides(
                Contrast.USUAL,
                "20 years",
                List.of(
                        new BothSides.House("a", 100, 50, true),
                        new BothSides.House("b", 200, -50, false),
                        new BothSides.House("c", 300, -10, false),
                        new BothSides.House("d", -100, -50, false),
                        new BothSides.House("e", -50, 10, false)),
                720,
                400);

        assertThat(chart.message())
                .isEqualTo(
                        "At 1 house, family and shop both gain with full-flange. At 1 house, family and shop both gain with"
                                + " inserts. At 2 houses, the family gains with full-flange, but the shop with inserts. At 1 house, the"
                                + " family gains with inserts, but the shop with full-flange.");
        assertThat(chart.familyAxis().getLabel()).isEqualTo("family saves with full-flange over 20 years \u2192");
        List<Point2D> spots = chart.spots();
        assertThat(spots)
                .hasSize(5)
                .allMatch(spot ->
                        spot.getX() > 0 && spot.getX() < 1 && spot.getY() > Frame.HEAD_PX / 400.0 && spot.getY() < 1);
        assertThat(spots.get(1).getX()).isGreaterThan(spots.get(0).getX());
        assertThat(spots.get(1).getY())
                .as("a loss of the shop lies lower")
                .isGreaterThan(spots.get(0).getY());
    }

    @Test
    void categoriesBeyondTheShapesGoTogether() {
        CostRisk chart = new CostRisk(
                Contrast.USUAL,
                "9 houses",
                "cost",
                "risk",
                IntStream.range(0, 9).mapToObj(i -> house("h", "c" + i, i, 0)).toList());

        assertThat(chart.byCategory()).hasSize(Marks.CATEGORY.size()).containsKey("other");
        assertThat(chart.byCategory().get("other")).hasSize(4);
    }

    private static CostRisk.House house(String label, String category, double usd, double risk) {
        return new CostRisk.House(label, category, usd, risk, false);
    }

    @Test
    void labourAddsUpTheStepsOfEachMethod() {
        assertThat(Samples.labour().message())
                .startsWith(
                        "A window takes 305 person-minutes with full-flange and 150 person-minutes with the insert.")
                .contains("set, level and screw (45) with full-flange and cap the outside (48)");
        assertThat(Samples.labour().axis().getLabel()).isEqualTo("person-minutes per window");
    }

    @Test
    void houseTotalsAreOrderedAndThinnedEvenly() {
        HouseTotals many = Samples.totals(500);

        assertThat(many.houses())
                .isSortedAccordingTo(java.util.Comparator.comparingDouble(
                        h -> h.usd().first().middle()));
        assertThat(many.shown())
                .hasSize(72)
                .contains(many.houses().get(0), many.houses().get(7));
        assertThat(Samples.totals(60).shown()).hasSize(60);
    }

    @Test
    void chanceOfMoreFallsFromOneToZeroThroughTheQuantiles() {
        ChanceOfMore chart = new ChanceOfMore(
                Contrast.USUAL,
                "one house",
                "cost",
                new Pair<>(List.of(30.0, 10.0, 20.0, 50.0, 40.0), List.of(1.0, 2.0, 3.0, 4.0, 5.0)));
        XYSeries series = chart.series(Method.FULL_FLANGE);

        assertThat(series.getX(0)).isEqualTo(10.0);
        assertThat(series.getY(0)).isEqualTo(1.0);
        assertThat(series.getX(series.getItemCount() - 1)).isEqualTo(50.0);
        assertThat(series.getY(series.getItemCount() - 1)).isEqualTo(0.0);
        assertThat(chart.quantile(Method.FULL_FLANGE, 0.9)).isCloseTo(46, Offset.offset(1e-9));
        assertThat(chart.message()).contains("one chance in ten to exceed $46").doesNotContain("loss");
    }

    /** By hand: of 10, 20, 30, 40, 50 one in five is above 45 and their mean is 30; the 90% point is 46, the 95% point 48. */
    @Test
    void atItsPriceTheChanceOfMoreIsThatOfALoss() {
        ChanceOfMore chart = new ChanceOfMore(
                Contrast.USUAL,
                "one house",
                "cost",
                new Pair<>(List.of(30.0, 10.0, 20.0, 50.0, 40.0), List.of(1.0, 2.0, 3.0, 4.0, 5.0)),
                Optional.of(new Pair<>(45.0, 10.0)));
        assertThat(chart.message())
                .contains("the chance of a loss is 20.0% (full-flange, $45) and 0.0% (insert, $10)")
                .contains("one run of twenty is $48 and $5")
                .contains("missed in 40% and 40% of the runs")
                .contains("less than \u22122% and 54% of the price");
        assertThat(chart.axis().getUpperBound()).isGreaterThanOrEqualTo(50);
    }

    @Test
    void recordsRefuseWhatCannotBe() {
        assertThatThrownBy(() -> new Spread(2, 1, 3)).hasMessageContaining("middle");
        assertThatThrownBy(() -> new LeakRose.Ray(360, new Pair<>(0.1, 0.1))).hasMessageContaining("bearing");
        assertThatThrownBy(() -> Samples.part("labour", -1, 1)).hasMessageContaining("first USD");
        assertThatThrownBy(() -> house("h", "c", Double.NaN, 0)).hasMessageContaining("cost difference");
    }

    @Test
    void stepsOfAnAxisAreRound() {
        assertThat(Axes.step(6)).isEqualTo(1);
        assertThat(Axes.step(0.5)).isCloseTo(0.1, Offset.offset(1e-12));
        assertThat(Axes.step(9000)).isEqualTo(2000);
        assertThat(Axes.step(19000)).isEqualTo(5000);
    }

    @Test
    void labelsMoveApartButKeepTheirOrderAndStayInside() {
        assertThat(Spacing.apart(new double[] {50, 10}, new double[] {20, 20}, 0, 100))
                .containsExactly(50, 10);
        assertThat(Spacing.apart(new double[] {50, 50}, new double[] {20, 20}, 0, 100))
                .containsExactly(40, 60);
        assertThat(Spacing.apart(new double[] {98, 99}, new double[] {20, 20}, 0, 100))
                .containsExactly(70, 90);
    }

    /** The steps that are not shown count in the totals and are never called the longest. */
    @Test
    void otherStepsCountButAreNotTheLongest() {
        LabourBySteps chart = new LabourBySteps(
                Contrast.USUAL,
                "",
                List.of(new LabourBySteps.Step("Set the unit", new Pair<>(30.0, 24.0))),
                Optional.of(new LabourBySteps.Step("all other steps", new Pair<>(200.0, 100.0))));
        assertThat(chart.message())
                .contains(
                        "230 person-minutes with full-flange and 124 person-minutes with the insert",
                        "Set the unit (30)")
                .doesNotContain("all other");
    }
}
