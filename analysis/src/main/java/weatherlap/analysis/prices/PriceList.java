package weatherlap.analysis.prices;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.Summary;

/** {@code price-list.csv}: what the shop asks, by method, size and story. A method is priced where nothing closes it. */
public final class PriceList {
    public static final Layout<PriceRow> LAYOUT = Layout.<PriceRow>of(
                    "price-list.csv", "Price list", "Windows or houses of one size, story and method.")
            .text(
                    "what",
                    "what",
                    "window: its share of the price of its house, all windows done; house: all its windows",
                    PriceRow::what)
            .method(PriceRow::method)
            .whole("story", "story", "on which the windows are; of houses how many they have", PriceRow::story)
            .text("size", "size", "united inches of a window's frame, or windows of a house", row -> row.size()
                    .label())
            .whole("count", "count", "windows or houses of this kind", PriceRow::count)
            .number("price_usd_mean", "price, mean", "USD", 2, "mean over them", row -> row.priceUsd()
                    .mean())
            .number("price_usd_p10", "price, 10%", "USD", 2, "one in ten is below", row -> row.priceUsd()
                    .p10())
            .number("price_usd_p50", "price, 50%", "USD", 2, "half of them are below", row -> row.priceUsd()
                    .p50())
            .number("price_usd_p90", "price, 90%", "USD", 2, "nine in ten are below", row -> row.priceUsd()
                    .p90())
            .number(
                    "once_usd",
                    "once a house",
                    "USD",
                    2,
                    "part of the price that a house with one window would bear as well, mean of their houses",
                    PriceRow::onceUsd)
            .build();

    private PriceList() {}

    private record Kind(boolean house, Method method, int story, SizeGroup size) implements Comparable<Kind> {
        private static final Comparator<Kind> ORDER = Comparator.comparing(Kind::house)
                .thenComparing(Kind::method)
                .thenComparingInt(Kind::story)
                .thenComparing(Kind::size);

        @Override
        public int compareTo(Kind other) {
            return ORDER.compare(this, other);
        }
    }

    private record Asked(double priceUsd, double onceUsd) {}

    /**
     * A row a kind: windows before houses, then by method, story and size.
     *
     * @param rounded prices as the shop names them, USD
     */
    public static List<PriceRow> rows(List<HouseChoice> choices, DoubleUnaryOperator rounded) {
        return rows(kinds(choices), rounded);
    }

    /**
     * A row a size of windows and method, in this order, their stories taken together as story 0.
     *
     * @param rounded prices as the shop names them, USD
     */
    public static List<PriceRow> windowsBySize(List<HouseChoice> choices, DoubleUnaryOperator rounded) {
        Map<Kind, List<Asked>> sizes =
                new TreeMap<>(Comparator.comparing(Kind::size).thenComparing(Kind::method));
        kinds(choices).forEach((kind, asked) -> {
            if (!kind.house) {
                sizes.computeIfAbsent(new Kind(false, kind.method, 0, kind.size), key -> new ArrayList<>())
                        .addAll(asked);
            }
        });
        return rows(sizes, rounded);
    }

    private static Map<Kind, List<Asked>> kinds(List<HouseChoice> choices) {
        Map<Kind, List<Asked>> kinds = new TreeMap<>();
        for (HouseChoice choice : choices) {
            addWindows(choice, kinds);
            addHouse(choice, kinds);
        }
        return kinds;
    }

    private static List<PriceRow> rows(Map<Kind, List<Asked>> kinds, DoubleUnaryOperator rounded) {
        List<PriceRow> rows = new ArrayList<>();
        kinds.forEach((kind, asked) -> rows.add(new PriceRow(
                kind.house ? PriceRow.HOUSE : PriceRow.WINDOW,
                kind.method,
                kind.story,
                kind.size,
                asked.size(),
                rounded(Summary.of(asked.stream().mapToDouble(Asked::priceUsd).toArray()), rounded),
                asked.stream().mapToDouble(Asked::onceUsd).average().orElseThrow())));
        return rows;
    }

    private static Summary rounded(Summary usd, DoubleUnaryOperator to) {
        return new Summary(
                to.applyAsDouble(usd.mean()),
                to.applyAsDouble(usd.p10()),
                to.applyAsDouble(usd.p50()),
                to.applyAsDouble(usd.p90()));
    }

    /** @param rounded prices as the shop names them, USD */
    public static ResultTable table(List<HouseChoice> choices, DoubleUnaryOperator rounded) {
        return ResultTable.of(LAYOUT, rows(choices, rounded));
    }

    private static void addWindows(HouseChoice choice, Map<Kind, List<Asked>> kinds) {
        List<Map<Method, OpeningResult>> openings = choice.result().byOpening();
        for (int o = 0; o < openings.size(); o++) {
            for (OpeningResult opening : openings.get(o).values()) {
                if (!choice.closed().get(o).containsKey(opening.method())) {
                    int story = choice.result().house().storeyOf(opening.elevation(), opening.opening());
                    SizeGroup size = SizeGroup.ofWindow(
                            opening.opening().frame().widthIn(),
                            opening.opening().frame().heightIn());
                    MethodResult house = choice.result().method(opening.method());
                    kinds.computeIfAbsent(new Kind(false, opening.method(), story, size), key -> new ArrayList<>())
                            .add(new Asked(opening.priceUsd(), house.setupUsd()));
                }
            }
        }
    }

    private static void addHouse(HouseChoice choice, Map<Kind, List<Asked>> kinds) {
        House house = choice.result().house();
        SizeGroup size = SizeGroup.ofHouse(house.openingCount());
        for (MethodResult whole : choice.result().methods().values()) {
            if (house.openingCount() > 0 && choice.closed().stream().noneMatch(o -> o.containsKey(whole.method()))) {
                kinds.computeIfAbsent(new Kind(true, whole.method(), house.storeys(), size), key -> new ArrayList<>())
                        .add(new Asked(whole.priceUsd(), whole.setupUsd()));
            }
        }
    }
}
