package weatherlap.charts;

import java.util.List;
import java.util.stream.IntStream;

/** Data that come seldom and break pictures: none, one, far too large, labels that are an attack or have no end. */
final class Oddities {

    static final String HOSTILE =
            "<script>alert('\"&')</script>\u202e\u0000 \u05d1\u05d9\u05ea \u0628\u064a\u062a \ud83c\udfe0";
    static final String ENDLESS = "a very long label with many words ".repeat(6);
    static final String UNBROKEN = "W".repeat(200);
    private static final List<String> LABELS = List.of(HOSTILE, ENDLESS, UNBROKEN);

    private Oddities() {}

    static List<Picture> all() {
        return List.of(
                new GlassLost("no openings", List.of()),
                new GlassLost(
                        ENDLESS,
                        IntStream.range(0, 3)
                                .mapToObj(i -> new GlassLost.Group(
                                        LABELS.get(i),
                                        1,
                                        new Pair<>(new Spread(-0.4, -0.4, -0.4), new Spread(0, 0.99, 1))))
                                .toList()),
                new GlassLost("one", List.of(new GlassLost.Group("all", 1, new Pair<>(zero(), zero())))),
                new CostStack("none", "house", List.of()),
                new CostStack("nothing", "house", List.of(Samples.part("labour", 0, 0))),
                new CostStack(
                        HOSTILE,
                        HOSTILE,
                        IntStream.range(0, 9)
                                .mapToObj(i -> Samples.part(LABELS.get(i % 3), i == 4 ? 9e11 : 1, 3e10))
                                .toList()),
                new LeakRose("none", "risk", List.of()),
                new LeakRose(UNBROKEN, ENDLESS, List.of(new LeakRose.Ray(77, new Pair<>(0.0, 1.0)))),
                new LeakRose("none leaks", "risk", List.of(new LeakRose.Ray(0, new Pair<>(0.0, 0.0)))),
                new ExposureRose("none", "one", "two", List.of()),
                new ExposureRose(HOSTILE, HOSTILE, ENDLESS, List.of(new ExposureRose.Ray(359, 1e6, 0))),
                new CostRisk("none", "cost", "risk", List.of()),
                new CostRisk("one", "cost", "risk", List.of(new CostRisk.House(UNBROKEN, HOSTILE, 0, 0, true))),
                new CostRisk(
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
                new LabourBySteps("none", List.of()),
                new LabourBySteps(
                        ENDLESS,
                        LABELS.stream()
                                .map(label -> Samples.step(label, 123456, 0))
                                .toList()),
                new HouseTotals("none", "cost", List.of()),
                new HouseTotals("one", HOSTILE, List.of(house(HOSTILE, 0, 0))),
                new HouseTotals(
                        UNBROKEN,
                        ENDLESS,
                        IntStream.range(0, 500)
                                .mapToObj(i -> house(UNBROKEN, 1e9 + i, 10))
                                .toList()),
                Samples.totals(13),
                new ChanceOfMore("none", "cost", new Pair<>(List.of(), List.of())),
                new ChanceOfMore("one draw", "cost", new Pair<>(List.of(100.0), List.of(100.0))),
                new ChanceOfMore(UNBROKEN, UNBROKEN, new Pair<>(List.of(1.0, 1e9), List.of(-5.0, 1.0, 2.0))));
    }

    private static HouseTotals.House house(String label, double fullFlange, double insert) {
        return new HouseTotals.House(label, new Pair<>(Samples.around(fullFlange), Samples.around(insert)));
    }

    private static Spread zero() {
        return new Spread(0, 0, 0);
    }
}
