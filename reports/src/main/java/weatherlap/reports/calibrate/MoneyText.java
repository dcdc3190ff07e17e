package weatherlap.reports.calibrate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import weatherlap.analysis.money.ItemFit;
import weatherlap.analysis.money.Level;
import weatherlap.analysis.money.MoneyFit;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.reports.page.TableView;
import weatherlap.sim.assumptions.Scalar;

/** Waste, prices and margin in sentences and tables. */
final class MoneyText {
    static final String METHOD =
            "Waste, prices and margin: each is the mean of actual over expected, on the log scale, shrunk towards 1 as"
                    + " far as its jobs leave it open. Packages used are set against the edges, openings and panels of the job; what new units"
                    + " cost against the price list by their size; the price of a job against its hours, its material, the road, permit and"
                    + " tipping. An amount more than 3.5 robust standard deviations from the others is set aside where there are eight or more."
                    + " Prices are those of the records, whatever their year.";

    private static final int NAMED = 5;

    private final MoneyFit fit;

    MoneyText(MoneyFit fit) {
        this.fit = fit;
    }

    List<String> sentences() {
        List<String> lines = new ArrayList<>();
        fit.measures().stream()
                .filter(measure -> measure.level().isSeen())
                .forEach(measure -> lines.add(InWords.capital(measure.name()) + ": " + off(measure.level()) + "."));
        fit.margin().ifPresent(margin -> lines.add(marginSentence(margin)));
        if (!fit.items().isEmpty()) {
            lines.add(itemSentence());
        }
        if (!fit.aside().isEmpty()) {
            lines.add("Set aside, too far from the other amounts: "
                    + fit.aside().stream()
                            .limit(NAMED)
                            .map(row -> row.job().id() + " (" + row.what() + ": "
                                    + Numbers.plain(row.actual(), 1) + ", about "
                                    + Numbers.plain(row.foreseen(), 1) + " expected)")
                            .collect(Collectors.joining("; "))
                    + (fit.aside().size() > NAMED ? "; and " + (fit.aside().size() - NAMED) + " more" : "")
                    + ".");
        }
        if (fit.unforeseen() > 0) {
            lines.add(Numbers.count(fit.unforeseen(), "row of an item", "rows of items")
                    + " stand at jobs where the tables expect none; the price counts, the amount does not.");
        }
        String high = fit.items().stream()
                .filter(ItemFit::foreseenTooHigh)
                .map(item -> item.item().tradeName())
                .collect(Collectors.joining("; "));
        if (!high.isEmpty()) {
            lines.add("Less is used than the tables put in the wall, even without waste: " + high
                    + ". Look at quantity_per_driver in materials.csv.");
        }
        return lines;
    }

    /** Bias and spread. */
    private static String off(Level level) {
        return Numbers.signed(100 * level.bias(), 1) + "% in the mean of " + Numbers.count(level.rows(), "job", "jobs")
                + ", a job varies by " + Numbers.percent(level.spread(), 0);
    }

    private static String marginSentence(MoneyFit.Margin margin) {
        return InWords.capital(name(margin)) + ": " + Numbers.count(margin.jobs(), "job", "jobs") + " left "
                + Numbers.percent(margin.seen(), 1) + " of the price where the scenario says "
                + Numbers.percent(margin.before(), 1) + "; fitted " + Numbers.percent(margin.after(), 1) + " (90%: "
                + Numbers.percent(margin.low(), 1) + " to " + Numbers.percent(margin.high(), 1) + ").";
    }

    private static String name(MoneyFit.Margin margin) {
        return margin.scalar() == Scalar.GROSS_MARGIN ? "gross margin" : "net profit";
    }

    private String itemSentence() {
        List<ItemFit> apart = fit.items().stream()
                .filter(item -> item.used().isSeen()
                                && (item.used().low() > 1 || item.used().high() < 1)
                        || item.paid().isSeen()
                                && (item.paid().low() > 1 || item.paid().high() < 1))
                .toList();
        String whole = fit.items().stream().anyMatch(ItemFit::whole)
                ? " Where all amounts are whole packages, half a one is taken off for what is left in the last."
                : "";
        return "Of " + Numbers.count(fit.items().size(), "item", "items") + " kept "
                + (apart.isEmpty() ? "none" : apart.size())
                + (apart.size() == 1 ? " has" : " have")
                + " moved so far that a 90% interval of waste or price leaves the table\u2019s value out." + whole;
    }

    /** Items, those first whose price or waste is furthest off. */
    TableView items() {
        TableView.Builder table = TableView.of("Items, waste and price of a package")
                .texts("item")
                .numbers(
                        "jobs",
                        "waste before",
                        "fitted",
                        "90%",
                        "price before",
                        "fitted",
                        "90%",
                        "used over estimate",
                        "a job varies by");
        fit.items().stream()
                .sorted(Comparator.comparingDouble(item ->
                        -Math.abs(Math.log(item.used().factor() * item.paid().factor()))))
                .forEach(item -> table.row(
                        item.item().tradeName(),
                        Numbers.plain(Math.max(item.used().rows(), item.paid().rows()), 0),
                        Numbers.percent(item.item().wasteFraction(), 0),
                        cell(item.used(), Numbers.percent(item.wasteFraction(), 0)),
                        cell(
                                item.used(),
                                Numbers.percent(item.lowWaste(), 0) + " to " + Numbers.percent(item.highWaste(), 0)),
                        usd(item, 1),
                        cell(item.paid(), usd(item, item.paid().factor())),
                        cell(
                                item.paid(),
                                usd(item, item.paid().low()) + " to "
                                        + usd(item, item.paid().high())),
                        cell(
                                item.estimated(),
                                Numbers.signed(100 * item.estimated().bias(), 0) + "%"),
                        cell(item.estimated(), Numbers.percent(item.estimated().spread(), 0))));
        return table.build();
    }

    private static String usd(ItemFit item, double factor) {
        return "$" + Numbers.plain(factor * item.item().price().mean(), 2);
    }

    private static String cell(Level level, String text) {
        return level.isSeen() ? text : "\u2013";
    }

    /** Factors of whole jobs and of new units. */
    TableView factors() {
        TableView.Builder table = TableView.of("Actual over expected")
                .texts("amount")
                .numbers("jobs", "as the jobs have it", "fitted", "low 90%", "high 90%", "a job varies by");
        fit.measures().stream()
                .filter(measure -> measure.level().isSeen())
                .forEach(measure -> row(table, measure.name(), measure.level()));
        fit.units()
                .forEach((method, level) ->
                        row(table, "new units, " + MethodStyle.of(method).label() + ", over the price list", level));
        return table.build();
    }

    private static void row(TableView.Builder table, String name, Level level) {
        table.row(
                name,
                Numbers.plain(level.rows(), 0),
                Numbers.plain(1 + level.bias(), 3),
                Numbers.plain(level.factor(), 3),
                Numbers.plain(level.low(), 3),
                Numbers.plain(level.high(), 3),
                Numbers.percent(level.spread(), 0));
    }

    /** In a few lines for the terminal. */
    List<String> lines() {
        return fit.isSeen() ? sentences() : List.of();
    }

    /** Where nothing is kept: what would be needed. */
    Optional<String> missing() {
        return fit.isSeen()
                ? Optional.empty()
                : Optional.of(
                        "No record keeps money: with material_usd, quoted_usd and price_usd in jobs.csv, and items in"
                                + " job-items.csv, waste, prices and margin are fitted too.");
    }
}
