package weatherlap.charts.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weatherlap.charts.Samples;
import weatherlap.charts.kit.HeatMap;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.Spread;
import weatherlap.charts.kit.Tone;
import weatherlap.charts.report.PortfolioHeatMap;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/** What the charts of drivers, break-even, whole portfolios and calibration hold and say, before they are drawn. */
class StudyChartDataTest {
    @Test
    void driversAreRankedByTheirTotalIndex() {
        DriverIndices chart = new DriverIndices(
                "", "cost", List.of(Samples.driver("small", 0.1, 0.1), Samples.driver("large", 0.2, 0.7)));

        assertThat(chart.drivers()).extracting(DriverIndices.Driver::label).containsExactly("large", "small");
        assertThat(chart.message()).contains("large (70%, alone 20%) and small (10%, alone 10%)");
    }

    @Test
    void swingsAreRankedByWidthAndSayWhatTurnsTheAnswer() {
        Swings chart = Samples.swings();

        assertThat(chart.swings())
                .extracting(Swings.Swing::label)
                .startsWith("repair cost", "prior of a reversed head lap");
        assertThat(chart.message()).endsWith("changes with repair cost and prior of a reversed head lap.");
        assertThat(new Swings(Contrast.USUAL, "", "cost", 5, List.of(new Swings.Swing("a", "1", "2", 4, 6))).message())
                .endsWith("No assumption alone changes which method costs less.");
    }

    @Test
    void breakEvenSaysWhichMethodCostsLessOnEachSide() {
        List<BreakEvenCurve.Point> points = List.of(
                new BreakEvenCurve.Point(10, new Pair<>(5.0, 9.0)), new BreakEvenCurve.Point(0, new Pair<>(5.0, 1.0)));
        BreakEvenCurve crossing = new BreakEvenCurve(
                Contrast.USUAL, "", "repair cost", "USD", "cost", points, Optional.of(new Spread(4, 5, 6.5)), 3.5);
        BreakEvenCurve none = new BreakEvenCurve(
                Contrast.USUAL, "", "repair cost", "USD", "cost", points.subList(0, 1), Optional.empty(), 20);

        assertThat(crossing.series(Method.INSERT).getX(0)).isEqualTo(0.0);
        assertThat(crossing.variedAxis().getLabel()).isEqualTo("repair cost, USD");
        assertThat(crossing.message())
                .isEqualTo(
                        "With repair cost below 5.00 USD the insert costs less, above it full-flange (nine times in ten the "
                                + "change lies between 4.00 and 6.50 USD). It is now 3.50 USD.");
        assertThat(crossing.svg()).contains(">now 3.50 USD<");
        assertThat(none.message())
                .endsWith("full-flange costs less throughout: the costs do not cross. It is now 20.0 USD.");
        assertThat(none.svg()).as("a value outside the range has no mark").doesNotContain(">now 20.0 USD<");
    }

    @Test
    void breakEvenMapTakesOneRowOfChancesForEachRow() {
        assertThat(Samples.breakEvenMap().message()).contains("horizon, years from 5 to 20");
        assertThatThrownBy(() -> new BreakEvenMap(Contrast.USUAL, "", "x", "y", List.of("1"), List.of("1"), List.of()))
                .hasMessageContaining("rows of chances");
        assertThatThrownBy(() -> new BreakEvenMap(
                        Contrast.USUAL, "", "x", "y", List.of("1"), List.of("1"), List.of(List.of(0.1, 0.2))))
                .hasMessageContaining("chances in a row");
    }

    @Test
    void heatRunsFromInsertOverPaleToFullFlange() {
        assertThat(HeatMap.color(Contrast.USUAL, 0)).isEqualTo(Tone.INSERT.color());
        assertThat(HeatMap.color(Contrast.USUAL, 0.5)).isEqualTo(Tone.FAINT.color());
        assertThat(HeatMap.color(Contrast.USUAL, 1)).isEqualTo(Tone.FULL_FLANGE.color());
    }

    @Test
    void portfolioMapWeighsTheSharesByHouses() {
        PortfolioHeatMap map = new PortfolioHeatMap(
                Contrast.USUAL,
                "",
                "storeys",
                "overhang, in.",
                List.of("1", "2"),
                List.of("0"),
                List.of(new PortfolioHeatMap.Cell(0, 0, 30, 1), new PortfolioHeatMap.Cell(1, 0, 10, 0.2)));

        assertThat(map.message())
                .startsWith(
                        "Full-flange is preferred for 80% of 40 houses; most for storeys 1 with overhang, in. 0 (100%");
        assertThatThrownBy(() -> new PortfolioHeatMap(
                        Contrast.USUAL,
                        "",
                        "x",
                        "y",
                        List.of("1"),
                        List.of("1"),
                        List.of(new PortfolioHeatMap.Cell(1, 0, 1, 1))))
                .hasMessageContaining("column");
    }

    @Test
    void fittedHoursCountTheJobsNearTheFit() {
        FittedHours chart = new FittedHours(
                "",
                List.of(
                        new FittedHours.Job(MethodStyle.INSERT, 10, 12),
                        new FittedHours.Job(MethodStyle.INSERT, 10, 13)));

        assertThat(chart.message())
                .isEqualTo(
                        "Of 2 jobs, 1 (50%) took within 20% of the fitted hours; on average they took +2.5 person-hours "
                                + "against the fit.");
        assertThat(chart.axis("h").getUpperBound()).isGreaterThanOrEqualTo(13);
    }

    @Test
    void jobsSetAsideAreCounted() {
        FittedHours chart = new FittedHours(
                "",
                List.of(
                        new FittedHours.Job(MethodStyle.INSERT, 10, 12),
                        new FittedHours.Job(MethodStyle.INSERT, 10, 40, Optional.of("job-7"))));
        assertThat(chart.message()).endsWith("Set aside: 1 job, ringed and named where there is room.");
        assertThat(chart.svg()).contains("job-7");
    }

    @Test
    void residualsNameTheLevelThatStandsFarthestOff() {
        Residuals chart = new Residuals(
                "",
                List.of(new Residuals.Factor(
                        "crew",
                        List.of(
                                new Residuals.Level("A", List.of(0.1, -0.1)),
                                new Residuals.Level("B", List.of(-0.3, -0.2, 0.5))))));

        assertThat(chart.message()).contains("stands crew B (3 jobs), with a median of \u221220");
    }
}
