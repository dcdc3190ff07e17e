package weatherlap.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Invented data for each picture, of the size a report has. */
final class Samples {

    private Samples() {}

    static List<Picture> all() {
        return List.of(
                glassLost(),
                costStack(),
                leakRose(),
                exposureRose(),
                costRisk(60),
                labour(),
                totals(6),
                totals(60),
                chanceOfMore());
    }

    static GlassLost glassLost() {
        return new GlassLost(
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

    static Spread around(double middle) {
        return new Spread(middle * 0.75, middle, middle * 1.3);
    }

    static CostStack costStack() {
        return new CostStack(
                "mean of 60 houses",
                "house",
                List.of(
                        part("labour", 5210, 2430),
                        part("material", 6380, 5900),
                        part("overhead", 2120, 1010),
                        part("expected callbacks", 310, 190),
                        part("service reserve", 340, 250),
                        part("margin", 5740, 3910)));
    }

    static CostStack.Part part(String label, double fullFlange, double insert) {
        return new CostStack.Part(label, new Pair<>(fullFlange, insert));
    }

    static LeakRose leakRose() {
        double[] insert = {0.19, 0.24, 0.22, 0.15, 0.11, 0.12, 0.14, 0.17};
        return new LeakRose(
                "812 openings in 60 houses",
                "chance of a leak at an opening within 15 years",
                IntStream.range(0, 8)
                        .mapToObj(i -> new LeakRose.Ray(i * 45, new Pair<>(insert[i] * 0.4, insert[i])))
                        .toList());
    }

    static ExposureRose exposureRose() {
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

    static CostRisk costRisk(int houses) {
        SplittableRandom random = new SplittableRandom(5);
        List<String> claddings = List.of("vinyl siding", "wood lap", "brick veneer", "fiber cement", "stucco");
        List<CostRisk.House> points = new ArrayList<>();
        for (int i = 0; i < houses; i++) {
            int k = Math.min(4, (int) (random.nextDouble() * random.nextDouble() * 6));
            double cost = 900 + 1500 * k + random.nextGaussian() * 1400;
            double risk = -0.13 + random.nextGaussian() * 0.07 + 0.02 * k;
            points.add(new CostRisk.House("House " + (i + 1), claddings.get(k), cost, risk, i % 11 == 0));
        }
        return new CostRisk("60 houses", "cost over 15 years", "chance of a leak within 15 years", points);
    }

    static LabourBySteps labour() {
        return new LabourBySteps(
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

    static LabourBySteps.Step step(String label, double fullFlange, double insert) {
        return new LabourBySteps.Step(label, new Pair<>(fullFlange, insert));
    }

    static HouseTotals totals(int houses) {
        SplittableRandom random = new SplittableRandom(9);
        return new HouseTotals(
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

    static ChanceOfMore chanceOfMore() {
        SplittableRandom random = new SplittableRandom(3);
        List<Double> insert = DoubleStream.generate(() -> 9000 * Math.exp(0.12 * random.nextGaussian()))
                .limit(2000)
                .boxed()
                .toList();
        List<Double> fullFlange = DoubleStream.generate(() -> 12500 * Math.exp(0.15 * random.nextGaussian()))
                .limit(2000)
                .boxed()
                .toList();
        return new ChanceOfMore("3 Fernbank Row, 2 000 draws", "cost of the job", new Pair<>(fullFlange, insert));
    }
}
