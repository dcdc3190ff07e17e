package weatherlap.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.drawing.WallRose;
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

/** Invented data for each chart, of the size a report has. */
public final class Samples {

    private Samples() {}

    public static List<Picture> all() {
        return List.of(
                seenCalls(),
                slopes(),
                changedKinds(),
                curves(),
                glassLost(),
                costStack(),
                leakRose(),
                exposureRose(),
                costRisk(60),
                bothSides(720, 400),
                bothSides(360, 380),
                labour(),
                totals(6),
                totals(60),
                chanceOfMore(),
                drivers(),
                swings(),
                breakEven(),
                breakEvenMap(),
                portfolioMap(),
                fittedHours(),
                rateMoves(),
                heldOutPlaces(),
                calibrationCurves(),
                residuals(),
                wallRose());
    }

    public static GlassLost glassLost() {
        return new GlassLost(
                Contrast.USUAL,
                "812 openings in 60 houses",
                List.of(
                        group("all openings", 812, 0.139, 0.243),
                        group("glass under 6 ft²", 203, 0.21, 0.34),
                        group("6 to 10 ft²", 312, 0.15, 0.26),
                        group("10 to 15 ft²", 214, 0.12, 0.21),
                        group("over 15 ft²", 83, 0.09, 0.16)));
    }

    private static GlassLost.Group group(String label, int openings, double fullFlange, double insert) {
        return new GlassLost.Group(label, openings, new Pair<>(around(fullFlange), around(insert)));
    }

    public static Spread around(double middle) {
        return new Spread(middle * 0.75, middle, middle * 1.3);
    }

    public static CostStack costStack() {
        return new CostStack(
                Contrast.USUAL,
                "mean of 60 houses",
                "house",
                List.of(
                        part("labour", 5210, 2430),
                        part("material", 6380, 5900),
                        part("overhead", 2120, 1010),
                        part("warranty", 310, 190),
                        part("service reserve", 340, 250),
                        part("margin", 5740, 3910)));
    }

    public static CostStack.Part part(String label, double fullFlange, double insert) {
        return new CostStack.Part(label, new Pair<>(fullFlange, insert));
    }

    public static LeakRose leakRose() {
        double[] insert = {0.19, 0.24, 0.22, 0.15, 0.11, 0.12, 0.14, 0.17};
        return new LeakRose(
                Contrast.USUAL,
                "812 openings in 60 houses",
                "chance of a leak at an opening within 15 years",
                IntStream.range(0, 8)
                        .mapToObj(i -> new LeakRose.Ray(i * 45, new Pair<>(insert[i] * 0.4, insert[i])))
                        .toList());
    }

    public static ExposureRose exposureRose() {
        return new ExposureRose(
                "an invented town, ten years of hours",
                "airfield index (ISO 15927-3)",
                "ASHRAE 160 index",
                IntStream.range(0, 72)
                        .mapToObj(i -> {
                            double rain = 330
                                    + 170 * Math.cos(Math.toRadians(i * 5 - 40))
                                    + 40 * Math.cos(Math.toRadians(i * 15));
                            return new ExposureRose.Ray(i * 5, rain, rain * 1.04 + 5);
                        })
                        .toList());
    }

    public static CostRisk costRisk(int houses) {
        SplittableRandom random = new SplittableRandom(5);
        List<String> claddings = List.of("vinyl siding", "wood lap", "brick veneer", "fiber cement", "stucco");
        List<CostRisk.House> points = new ArrayList<>();
        for (int i = 0; i < houses; i++) {
            int k = Math.min(4, (int) (random.nextDouble() * random.nextDouble() * 6));
            double cost = 900 + 1500 * k + random.nextGaussian() * 1400;
            double risk = -0.13 + random.nextGaussian() * 0.07 + 0.02 * k;
            points.add(new CostRisk.House("House " + (i + 1), claddings.get(k), cost, risk, i % 11 == 0));
        }
        return new CostRisk(
                Contrast.USUAL, "60 houses", "cost over 15 years", "chance of a leak within 15 years", points);
    }

    public static BothSides bothSides(int widthPx, int heightPx) {
        SplittableRandom random = new SplittableRandom(7);
        return new BothSides(
                Contrast.USUAL,
                "20 years",
                IntStream.range(0, 60)
                        .mapToObj(i -> new BothSides.House(
                                "House " + (i + 1),
                                600 + random.nextGaussian() * 3000,
                                -700 + random.nextGaussian() * 300,
                                i % 11 == 0))
                        .toList(),
                widthPx,
                heightPx);
    }

    public static LabourBySteps labour() {
        return new LabourBySteps(
                Contrast.USUAL,
                "mean of 812 openings",
                List.of(
                        step("protect the room", 15, 10),
                        step("mark and unlock the siding", 20, 0),
                        step("take out the old unit", 30, 0),
                        step("take out the sashes and clean the frame", 0, 30),
                        step("cut back the returns", 40, 0),
                        step("prepare the opening and lay the sill tape", 25, 0),
                        step("set, level and screw", 45, 29),
                        step("tape and flap", 20, 0),
                        step("foam and inside seal", 20, 23),
                        step("re-hang the siding", 30, 0),
                        step("cap the outside", 0, 48),
                        step("returns and trim", 45, 0),
                        step("clean up", 15, 10)));
    }

    public static LabourBySteps.Step step(String label, double fullFlange, double insert) {
        return new LabourBySteps.Step(label, new Pair<>(fullFlange, insert));
    }

    public static HouseTotals totals(int houses) {
        SplittableRandom random = new SplittableRandom(9);
        return new HouseTotals(
                Contrast.USUAL,
                houses + " houses",
                "cost of the job",
                IntStream.range(0, houses)
                        .mapToObj(i -> {
                            double insert = 6000 + 9000 * random.nextDouble();
                            double more = 1.1 + 0.5 * random.nextDouble();
                            return new HouseTotals.House(
                                    (i + 3) + " Fernbank Row", new Pair<>(around(insert * more), around(insert)));
                        })
                        .toList());
    }

    public static ChanceOfMore chanceOfMore() {
        SplittableRandom random = new SplittableRandom(3);
        List<Double> insert = DoubleStream.generate(() -> 9000 * Math.exp(0.12 * random.nextGaussian()))
                .limit(2000)
                .boxed()
                .toList();
        List<Double> fullFlange = DoubleStream.generate(() -> 12500 * Math.exp(0.15 * random.nextGaussian()))
                .limit(2000)
                .boxed()
                .toList();
        return new ChanceOfMore(
                Contrast.USUAL, "3 Fernbank Row, 2 000 draws", "cost of the job", new Pair<>(fullFlange, insert));
    }

    public static DriverIndices drivers() {
        return new DriverIndices(
                "512 base samples",
                "the cost difference",
                List.of(
                        driver("prior of a reversed head lap", 0.41, 0.52),
                        driver("repair cost", 0.22, 0.34),
                        driver("admitted share at the sill", 0.09, 0.12),
                        driver("carpenter's wage", 0.06, 0.06),
                        driver("minutes to cut back the returns", 0.03, 0.04),
                        driver("price of a flanged unit", -0.005, 0.01)));
    }

    public static DriverIndices.Driver driver(String label, double first, double total) {
        return new DriverIndices.Driver(label, first, 0.03, total, 0.025);
    }

    public static Swings swings() {
        return new Swings(
                Contrast.USUAL,
                "60 houses",
                "cost over 15 years",
                1350,
                List.of(
                        new Swings.Swing("repair cost", "$2 000", "$18 000", 3900, -2600),
                        new Swings.Swing("prior of a reversed head lap", "5 %", "60 %", 2900, -1400),
                        new Swings.Swing("carpenter's wage", "$21/h", "$34/h", 700, 2000),
                        new Swings.Swing("crew size", "2", "3", 1200, 1500),
                        new Swings.Swing("price of a flanged unit", "$310", "$540", 400, 2700)));
    }

    public static BreakEvenCurve breakEven() {
        return new BreakEvenCurve(
                Contrast.USUAL,
                "60 houses",
                "repair cost",
                "USD",
                "cost over 15 years",
                IntStream.rangeClosed(0, 20)
                        .mapToObj(i -> new BreakEvenCurve.Point(
                                i * 1000, new Pair<>(14000 + i * 110.0, 10500 + i * 420.0 + i * i * 3)))
                        .toList(),
                java.util.Optional.of(new Spread(8200, 9700, 12400)),
                3500);
    }

    public static BreakEvenMap breakEvenMap() {
        List<List<Double>> chances = IntStream.range(0, 16)
                .mapToObj(row -> IntStream.range(0, 20)
                        .mapToObj(c -> 1 / (1 + Math.exp(5 - 0.35 * c - 0.25 * row)))
                        .toList())
                .toList();
        return new BreakEvenMap(
                Contrast.USUAL,
                "60 houses",
                "repair cost, USD",
                "horizon, years",
                IntStream.range(0, 20)
                        .mapToObj(i -> Numbers.plain(i * 1000.0, 0))
                        .toList(),
                IntStream.range(0, 16).mapToObj(i -> "" + (5 + i)).toList(),
                chances);
    }

    public static PortfolioHeatMap portfolioMap() {
        List<PortfolioHeatMap.Cell> cells = new ArrayList<>();
        for (int row = 0; row < 4; row++) {
            for (int column = 0; column < 3; column++) {
                if (row != 3 || column != 2) {
                    cells.add(new PortfolioHeatMap.Cell(
                            column, row, 12 - 3 * column + row, Math.min(1, 0.95 - 0.28 * row + 0.1 * column)));
                }
            }
        }
        return new PortfolioHeatMap(
                Contrast.USUAL,
                "60 houses",
                "storeys",
                "overhang, in.",
                List.of("1", "2", "3"),
                List.of("0", "1 to 12", "13 to 18", "over 18"),
                cells);
    }

    public static ChangedKinds changedKinds() {
        return new ChangedKinds(
                "60 houses",
                List.of("wages up", "thin margin", "leaks rare"),
                List.of(
                        new ChangedKinds.Group(
                                "cladding",
                                List.of(
                                        new ChangedKinds.Kind("vinyl siding", 31, List.of(0, 12, 29)),
                                        new ChangedKinds.Kind("brick veneer", 9, List.of(9, 0, 5)))),
                        new ChangedKinds.Group(
                                "stories", List.of(new ChangedKinds.Kind("1 story", 40, List.of(9, 12, 34))))));
    }

    public static Slopes slopes() {
        return new Slopes(
                "60 houses",
                "Solid: full-flange; dashed: the insert.",
                List.of("base", "wages up", "thin margin"),
                MethodStyle.FULL_FLANGE,
                MethodStyle.INSERT,
                List.of(
                        new Slopes.Panel(
                                "price",
                                List.of(16_102.0, 18_000.0, 13_543.0),
                                List.of(12_283.0, 13_137.0, 10_365.0),
                                Numbers::usd),
                        new Slopes.Panel(
                                "crew days",
                                List.of(6.8, 6.8, 5.2),
                                List.of(2.9, 2.9, 2.1),
                                days -> Numbers.plain(days, 1))));
    }

    public static SeenCalls seenCalls() {
        return new SeenCalls(
                "200 invented jobs",
                List.of(
                        new SeenCalls.Row("full-flange", 12, 9.4, 11.3),
                        new SeenCalls.Row("insert", 31, 18.2, 29.9),
                        new SeenCalls.Row("years since: 0 to 2", 0, 0, 0)));
    }

    public static Curves curves() {
        List<Double> years = List.of(0.0, 2.0, 2.0, 8.0);
        return new Curves(
                "without-a-call",
                "Jobs without a leak call",
                "200 invented jobs",
                "After 8 years 81% of the jobs had no leak call.",
                "years since the work",
                "share of jobs without a leak call",
                true,
                List.of(
                        new Curves.Curve(
                                "insert, seen", MethodStyle.INSERT.color(), false, years, List.of(1.0, 1.0, 0.8, 0.8)),
                        new Curves.Curve(
                                "insert, by the fit",
                                MethodStyle.INSERT.color(),
                                true,
                                years,
                                List.of(1.0, 0.9, 0.9, 0.8))));
    }

    public static RateMoves rateMoves() {
        return new RateMoves(
                "invented rates",
                List.of(
                        new RateMoves.Rate("Set, shim, level and square the unit", 120, 141, 132, 150),
                        new RateMoves.Rate("Re-hang siding in its own place", 90, 61, 48, 75),
                        new RateMoves.Rate("Tape the head", 12, 12.4, 8, 17)));
    }

    public static HeldOutPlaces heldOutPlaces() {
        SplittableRandom random = new SplittableRandom(12);
        return new HeldOutPlaces(
                "80 invented jobs",
                IntStream.range(0, 80).mapToObj(i -> random.nextDouble()).toList());
    }

    public static CalibrationCurves calibrationCurves() {
        List<Double> even = List.of(0.0, 0.24, 0.55, 0.76, 1.0);
        List<Double> narrow = List.of(0.18, 0.3, 0.5, 0.68, 0.85);
        return new CalibrationCurves(
                "invented jobs",
                Stream.of("hours", "days", "material", "price", "calls")
                        .map(amount -> new CalibrationCurves.Panel(
                                amount,
                                List.of(
                                        new CalibrationCurves.Line("the tables", narrow),
                                        new CalibrationCurves.Line("calibrated", even),
                                        new CalibrationCurves.Line("average a window", List.of(0.0, 1.0)))))
                        .toList());
    }

    public static FittedHours fittedHours() {
        SplittableRandom random = new SplittableRandom(11);
        return new FittedHours(
                "80 invented jobs",
                IntStream.range(0, 80)
                        .mapToObj(i -> {
                            MethodStyle method = i % 2 == 0 ? MethodStyle.FULL_FLANGE : MethodStyle.INSERT;
                            double fitted = (i % 2 == 0 ? 30 : 14) + 40 * random.nextDouble();
                            return new FittedHours.Job(method, fitted, fitted * Math.exp(0.14 * random.nextGaussian()));
                        })
                        .toList());
    }

    public static Residuals residuals() {
        return new Residuals(
                "80 invented jobs",
                List.of(
                        new Residuals.Factor(
                                "crew", List.of(level("A", 30, 0.02), level("B", 28, -0.06), level("C", 22, 0.09))),
                        new Residuals.Factor(
                                "temperature",
                                List.of(
                                        level("under 40 °F", 12, 0.05),
                                        level("40 to 70 °F", 41, 0),
                                        level("over 70 °F", 27, -0.01))),
                        new Residuals.Factor("storey", List.of(level("first", 50, 0), level("second", 30, 0.03)))));
    }

    public static Residuals.Level level(String label, int jobs, double shift) {
        SplittableRandom random = new SplittableRandom(jobs);
        return new Residuals.Level(
                label,
                DoubleStream.generate(() -> shift + 0.12 * random.nextGaussian())
                        .limit(jobs)
                        .boxed()
                        .toList());
    }

    public static WallRose wallRose() {
        return new WallRose(
                IntStream.range(0, 36)
                        .mapToObj(i -> new WallRose.Ray(10.0 * i, 100 + 80 * Math.cos(Math.toRadians(10.0 * i - 200))))
                        .toList(),
                List.of(20.0, 110.0, 200.0, 290.0));
    }
}
