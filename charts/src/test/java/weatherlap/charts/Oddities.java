package weatherlap.charts;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.drawing.GlassSquares;
import weatherlap.charts.drawing.RoomView;
import weatherlap.charts.drawing.WallDrawing;
import weatherlap.charts.drawing.WallPiece;
import weatherlap.charts.drawing.WallRose;
import weatherlap.charts.drawing.WindowSketch;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Spread;
import weatherlap.charts.report.BothSides;
import weatherlap.charts.report.ChanceOfMore;
import weatherlap.charts.report.CostRisk;
import weatherlap.charts.report.CostStack;
import weatherlap.charts.report.GlassLost;
import weatherlap.charts.report.HouseTotals;
import weatherlap.charts.report.LabourBySteps;
import weatherlap.charts.report.LeakRose;
import weatherlap.charts.report.PortfolioHeatMap;
import weatherlap.charts.study.BreakEvenCurve;
import weatherlap.charts.study.BreakEvenMap;
import weatherlap.charts.study.CalibrationCurves;
import weatherlap.charts.study.ChangedKinds;
import weatherlap.charts.study.Curves;
import weatherlap.charts.study.DriverIndices;
import weatherlap.charts.study.ExposureRose;
import weatherlap.charts.study.FittedHours;
import weatherlap.charts.study.HeldOutPlaces;
import weatherlap.charts.study.RateMoves;
import weatherlap.charts.study.Residuals;
import weatherlap.charts.study.SeenCalls;
import weatherlap.charts.study.Slopes;
import weatherlap.charts.study.Swings;
import weatherlap.sim.method.Contrast;

/** Data that come seldom and break pictures: none, one, far too large, labels that are an attack or have no end. */
public final class Oddities {

    public static final String HOSTILE =
            "<script>alert('\"&')</script>\u202e\u0000 \u05d1\u05d9\u05ea \u0628\u064a\u062a \ud83c\udfe0";
    public static final String ENDLESS = "a very long label with many words ".repeat(6);
    public static final String UNBROKEN = "W".repeat(200);
    private static final List<String> LABELS = List.of(HOSTILE, ENDLESS, UNBROKEN);

    private Oddities() {}

    public static List<Picture> all() {
        return Stream.of(glassAndCosts(), rain(), houses(), assumptions(), breakEven(), calibration(), drawings())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Picture> glassAndCosts() {
        return List.of(
                new GlassLost(Contrast.USUAL, "no openings", List.of()),
                new GlassLost(
                        Contrast.USUAL,
                        ENDLESS,
                        IntStream.range(0, 3)
                                .mapToObj(i -> new GlassLost.Group(
                                        LABELS.get(i),
                                        1,
                                        new Pair<>(new Spread(-0.4, -0.4, -0.4), new Spread(0, 0.99, 1))))
                                .toList()),
                new GlassLost(
                        Contrast.USUAL, "one", List.of(new GlassLost.Group("all", 1, new Pair<>(zero(), zero())))),
                new CostStack(Contrast.USUAL, "none", "house", List.of()),
                new CostStack(Contrast.USUAL, "nothing", "house", List.of(Samples.part("labour", 0, 0))),
                new CostStack(
                        Contrast.USUAL,
                        HOSTILE,
                        HOSTILE,
                        IntStream.range(0, 9)
                                .mapToObj(i -> Samples.part(LABELS.get(i % 3), i == 4 ? 9e11 : 1, 3e10))
                                .toList()));
    }

    private static List<Picture> rain() {
        return List.of(
                new LeakRose(Contrast.USUAL, "none", "risk", List.of()),
                new LeakRose(Contrast.USUAL, UNBROKEN, ENDLESS, List.of(new LeakRose.Ray(77, new Pair<>(0.0, 1.0)))),
                new LeakRose(Contrast.USUAL, "none leaks", "risk", List.of(new LeakRose.Ray(0, new Pair<>(0.0, 0.0)))),
                new ExposureRose("none", "one", "two", List.of()),
                new ExposureRose(HOSTILE, HOSTILE, ENDLESS, List.of(new ExposureRose.Ray(359, 1e6, 0))),
                new WallRose(List.of(), List.of()),
                new WallRose(List.of(new WallRose.Ray(0, 0)), List.of(359.9)),
                new WallRose(List.of(new WallRose.Ray(123, 1e9)), List.of(0.0, 0.0, 45.0)));
    }

    private static List<Picture> houses() {
        return List.of(
                new CostRisk(Contrast.USUAL, "none", "cost", "risk", List.of()),
                new CostRisk(
                        Contrast.USUAL,
                        "one",
                        "cost",
                        "risk",
                        List.of(new CostRisk.House(UNBROKEN, HOSTILE, 0, 0, true))),
                new CostRisk(
                        Contrast.USUAL,
                        HOSTILE,
                        ENDLESS,
                        ENDLESS,
                        IntStream.range(0, 60)
                                .mapToObj(i -> new CostRisk.House(
                                        LABELS.get(i % 3),
                                        "category " + i % 9 + ENDLESS,
                                        i == 5 ? 1e8 : -100.0 * (i % 3),
                                        0.5,
                                        true))
                                .toList()),
                new BothSides(Contrast.USUAL, "20 years", List.of(), 720, 400),
                new BothSides(Contrast.USUAL, "1 year", List.of(new BothSides.House(UNBROKEN, 0, 0, true)), 360, 380),
                new BothSides(
                        Contrast.USUAL,
                        ENDLESS,
                        IntStream.range(0, 60)
                                .mapToObj(i -> new BothSides.House(
                                        LABELS.get(i % 3), i == 5 ? 1e8 : -100.0 * (i % 3), 0.5 * i, true))
                                .toList(),
                        360,
                        380),
                new HouseTotals(Contrast.USUAL, "none", "cost", List.of()),
                new HouseTotals(Contrast.USUAL, "one", HOSTILE, List.of(house(HOSTILE, 0, 0))),
                new HouseTotals(
                        Contrast.USUAL,
                        UNBROKEN,
                        ENDLESS,
                        IntStream.range(0, 500)
                                .mapToObj(i -> house(UNBROKEN, 1e9 + i, 10))
                                .toList()),
                Samples.totals(13),
                new ChanceOfMore(Contrast.USUAL, "none", "cost", new Pair<>(List.of(), List.of())),
                new ChanceOfMore(Contrast.USUAL, "one draw", "cost", new Pair<>(List.of(100.0), List.of(100.0))),
                new ChanceOfMore(
                        Contrast.USUAL, UNBROKEN, UNBROKEN, new Pair<>(List.of(1.0, 1e9), List.of(-5.0, 1.0, 2.0))));
    }

    private static List<Picture> assumptions() {
        return List.of(
                new LabourBySteps(Contrast.USUAL, "none", List.of()),
                new LabourBySteps(
                        Contrast.USUAL,
                        ENDLESS,
                        LABELS.stream()
                                .map(label -> Samples.step(label, 123456, 0))
                                .toList()),
                new DriverIndices("none", "cost", List.of()),
                new DriverIndices(
                        HOSTILE,
                        ENDLESS,
                        LABELS.stream()
                                .map(label -> Samples.driver(label, -0.9, 1.4))
                                .toList()),
                new Swings(Contrast.USUAL, "none", "cost", 0, List.of()),
                new Swings(
                        Contrast.USUAL,
                        UNBROKEN,
                        HOSTILE,
                        -5e8,
                        LABELS.stream()
                                .map(label -> new Swings.Swing(label, label, label, -9e8, 3))
                                .toList()));
    }

    private static List<Picture> breakEven() {
        return List.of(
                new BreakEvenCurve(Contrast.USUAL, "none", "x", "", "cost", List.of(), Optional.empty(), 0),
                new BreakEvenCurve(
                        Contrast.USUAL,
                        "one point",
                        "x",
                        "",
                        "cost",
                        List.of(new BreakEvenCurve.Point(3, new Pair<>(5.0, 5.0))),
                        Optional.empty(),
                        3),
                new BreakEvenCurve(
                        Contrast.USUAL,
                        ENDLESS,
                        UNBROKEN,
                        "miles",
                        HOSTILE,
                        List.of(
                                new BreakEvenCurve.Point(-1e7, new Pair<>(0.0, 9e9)),
                                new BreakEvenCurve.Point(1e7, new Pair<>(1e9, -9e9))),
                        Optional.of(new Spread(-2e7, -1e7, 3e7)),
                        1e9),
                new BreakEvenMap(Contrast.USUAL, "none", "x", "y", List.of(), List.of(), List.of()),
                new BreakEvenMap(
                        Contrast.USUAL,
                        ENDLESS,
                        HOSTILE,
                        UNBROKEN,
                        LABELS,
                        List.of(UNBROKEN),
                        List.of(List.of(0.0, 0.5, 1.0))),
                new PortfolioHeatMap(Contrast.USUAL, "none", "x", "y", List.of(), List.of(), List.of()),
                new PortfolioHeatMap(
                        Contrast.USUAL,
                        ENDLESS,
                        ENDLESS,
                        HOSTILE,
                        IntStream.range(0, 30).mapToObj(i -> LABELS.get(i % 3)).toList(),
                        LABELS,
                        List.of(
                                new PortfolioHeatMap.Cell(7, 2, 1_000_000, 0.5),
                                new PortfolioHeatMap.Cell(29, 0, 1, 1))));
    }

    private static List<Picture> calibration() {
        return List.of(
                new SeenCalls("none", List.of()),
                new ChangedKinds("none", List.of(), List.of()),
                new ChangedKinds(
                        HOSTILE,
                        LABELS,
                        List.of(new ChangedKinds.Group(
                                ENDLESS,
                                LABELS.stream()
                                        .map(label -> new ChangedKinds.Kind(label, 1_000_000, List.of(0, 1_000_000, 7)))
                                        .toList()))),
                new Slopes("none", "None.", List.of(), MethodStyle.FULL_FLANGE, MethodStyle.INSERT, List.of()),
                new Slopes(
                        HOSTILE,
                        "Odd.",
                        LABELS,
                        MethodStyle.FULL_FLANGE,
                        MethodStyle.INSERT,
                        List.of(new Slopes.Panel(
                                UNBROKEN,
                                LABELS.stream().map(label -> 7.0).toList(),
                                LABELS.stream().map(label -> 7.0).toList(),
                                Numbers::usd))),
                new SeenCalls(
                        HOSTILE,
                        LABELS.stream()
                                .map(label -> new SeenCalls.Row(label, 1_000_000, 1e-9, 2e6))
                                .toList()),
                new Curves("no-curve", "None", "none", "None.", "x", "y", true, List.of()),
                new Curves(
                        "odd-curve",
                        "Odd",
                        ENDLESS,
                        "Odd.",
                        UNBROKEN,
                        HOSTILE,
                        false,
                        LABELS.stream()
                                .map(label -> new Curves.Curve(
                                        label, java.awt.Color.BLACK, true, List.of(0.0, 1e6), List.of(-1e6, 1e6)))
                                .toList()),
                new RateMoves("none", List.of()),
                new RateMoves(ENDLESS, List.of(new RateMoves.Rate(ENDLESS, 0, 1e6, 0, 1e7))),
                new CalibrationCurves("none", List.of()),
                new CalibrationCurves(
                        ENDLESS,
                        LABELS.stream()
                                .map(label -> new CalibrationCurves.Panel(
                                        label, List.of(new CalibrationCurves.Line(label, List.of(0.0, 0.0, 1.0)))))
                                .toList()),
                new HeldOutPlaces("none", List.of()),
                new HeldOutPlaces(ENDLESS, List.of(0.0, 1.0)),
                new FittedHours("none", List.of()),
                new FittedHours(ENDLESS, List.of(new FittedHours.Job(MethodStyle.INSERT, 0, 1e6))),
                new Residuals("none", List.of()),
                new Residuals(
                        HOSTILE,
                        LABELS.stream()
                                .map(label -> new Residuals.Factor(
                                        label,
                                        List.of(
                                                new Residuals.Level(label, List.of()),
                                                new Residuals.Level(label, List.of(40.0)))))
                                .toList()));
    }

    private static List<Picture> drawings() {
        return List.of(
                new WindowSketch(HOSTILE, new WindowSketch.View(List.of(), 0), 1),
                new WindowSketch(
                        UNBROKEN,
                        new WindowSketch.View(
                                List.of(new WallPiece(WallPiece.Kind.GLASS, -500, -500, 1000, 0.01)), 0.07),
                        0.001),
                new WindowSketch(ENDLESS, window(144, 8), 1),
                new WindowSketch(HOSTILE, window(0, 0), 1),
                new WindowSketch(UNBROKEN, window(7.5, 143.9375), 1),
                new RoomView(
                        HOSTILE,
                        "It cannot be built.",
                        new WindowSketch.View(List.of(), 0),
                        144,
                        8,
                        new Rectangle2D.Double(),
                        List.of(),
                        RoomView.scale(144, 8, 200, 100)),
                new RoomView(
                        ENDLESS,
                        "It keeps nothing.",
                        window(144, 8),
                        144,
                        8,
                        new Rectangle2D.Double(0, 0, 144, 8),
                        List.of(
                                new RoomView.Edge(RoomView.Side.TOP, "+12\u215d\u2033"),
                                new RoomView.Edge(RoomView.Side.LEFT, "12\u215d\u2033")),
                        RoomView.scale(144, 8, 200, 100)),
                new GlassSquares(
                        HOSTILE,
                        "There is no glass.",
                        List.of(new GlassSquares.Row(HOSTILE, 0), new GlassSquares.Row(ENDLESS, 0)),
                        1),
                new GlassSquares(
                        UNBROKEN,
                        "It gains glass.",
                        List.of(new GlassSquares.Row("today", 0.2), new GlassSquares.Row(UNBROKEN, 41.9)),
                        GlassSquares.squareFt2(41.9)),
                new WallDrawing("bare", 120, 100, List.of(), List.of()),
                new WallDrawing(
                        ENDLESS,
                        2000,
                        480,
                        List.of(
                                new WallDrawing.Panel(UNBROKEN, 0, 0, 144, 4, true),
                                new WallDrawing.Panel("B1", 0, 4, 144, 9, true)),
                        List.of(
                                new WallDrawing.Opening(HOSTILE, 500, 100, 8, 8),
                                new WallDrawing.Opening(ENDLESS, 700, 100, 80, 40))));
    }

    private static WindowSketch.View window(double widthIn, double heightIn) {
        return new WindowSketch.View(
                List.of(new WallPiece(WallPiece.Kind.GLASS, -3, 2, widthIn, heightIn)), widthIn * heightIn / 144);
    }

    private static HouseTotals.House house(String label, double fullFlange, double insert) {
        return new HouseTotals.House(label, new Pair<>(Samples.around(fullFlange), Samples.around(insert)));
    }

    private static Spread zero() {
        return new Spread(0, 0, 0);
    }
}
