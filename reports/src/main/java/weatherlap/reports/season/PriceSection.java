package weatherlap.reports.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.prices.PriceList;
import weatherlap.analysis.prices.PriceRow;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.shop.Terms;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.ReportWords;
import weatherlap.reports.page.Section;
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Method;

/** What the shop asks for a window and a house, to hang up. */
public final class PriceSection {
    private PriceSection() {}

    public static Section of(List<HouseChoice> houses, Terms terms) {
        List<PriceRow> rows = PriceList.rows(houses, terms::rounded);
        List<Method> methods =
                rows.stream().map(PriceRow::method).distinct().sorted().toList();
        return new Section(
                "prices",
                "Price list",
                "Price list",
                Section.Sheet.WIDE,
                List.of(
                        new Block.Paragraphs(List.of(
                                "The middle price, and in brackets where eight in ten lie. A window's price is its share of a house of"
                                        + " which all windows are done; a window done alone also bears what a house needs once"
                                        + once(rows, methods) + ". A method is priced where it can be built."
                                        + rounding(terms))),
                        table(
                                "A window by its story and its size: width and height of the old frame together",
                                "windows",
                                rows.stream()
                                        .filter(row -> row.what().equals(PriceRow.WINDOW))
                                        .toList(),
                                methods),
                        table(
                                "A house by its stories and how many windows it has",
                                "houses",
                                rows.stream()
                                        .filter(row -> row.what().equals(PriceRow.HOUSE))
                                        .toList(),
                                methods)));
    }

    private static String rounding(Terms terms) {
        return terms.roundToUsd().isPresent()
                ? " Prices are rounded to " + ReportWords.usd(terms.roundToUsd().getAsDouble())
                        + ", as the shop file says."
                : "";
    }

    private static String once(List<PriceRow> rows, List<Method> methods) {
        List<String> each = new ArrayList<>();
        for (Method method : methods) {
            rows.stream()
                    .filter(row -> row.method() == method && row.what().equals(PriceRow.HOUSE))
                    .mapToDouble(PriceRow::onceUsd)
                    .average()
                    .ifPresent(usd -> each.add("about " + ReportWords.usd(usd) + " by " + method.inSentence()));
        }
        return each.isEmpty() ? "" : ": " + String.join(", ", each);
    }

    private static Block.Table table(String caption, String counted, List<PriceRow> rows, List<Method> methods) {
        TableView.Builder table = TableView.of(caption).texts("size");
        for (Method method : methods) {
            table.numbers(method.label(), counted);
        }
        Map<String, List<PriceRow>> kinds = new LinkedHashMap<>();
        rows.stream()
                .sorted(Comparator.comparingInt(PriceRow::story).thenComparing(PriceRow::size))
                .forEach(row -> kinds.computeIfAbsent(kind(row), key -> new ArrayList<>())
                        .add(row));
        kinds.forEach((kind, alike) -> {
            List<String> cells = new ArrayList<>(List.of(kind));
            for (Method method : methods) {
                Optional<PriceRow> row =
                        alike.stream().filter(r -> r.method() == method).findFirst();
                cells.add(row.map(PriceSection::price).orElse(""));
                cells.add(row.map(r -> Numbers.plain(r.count(), 0)).orElse(""));
            }
            table.row(cells.toArray(String[]::new));
        });
        return new Block.Table(table.build(), "", "fixed");
    }

    private static String kind(PriceRow row) {
        String stories = row.what().equals(PriceRow.HOUSE)
                ? Numbers.count(row.story(), "story", "stories")
                : "story " + row.story();
        return stories + ", " + row.size().label();
    }

    private static String price(PriceRow row) {
        return ReportWords.within(
                ReportWords.usd(row.priceUsd().p50()),
                ReportWords.usd(row.priceUsd().p10()),
                ReportWords.usd(row.priceUsd().p90()));
    }
}
