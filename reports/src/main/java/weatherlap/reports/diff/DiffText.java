package weatherlap.reports.diff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import weatherlap.analysis.changes.ChangedRow;
import weatherlap.analysis.changes.HouseMove;
import weatherlap.analysis.changes.Parts;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.output.RunFile;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * What two reports differ in, line by line.
 *
 * @param log the change log of this version
 */
record DiffText(EarlierReport was, EarlierReport is, String log) {
    private static final int MOST_ROWS = 30;
    private static final int MOST_HOUSES = 10;
    private static final String TO = " -> ";

    /** A column of {@code houses.csv} in words. */
    private record Shown(String column, String words, DoubleFunction<String> number) {}

    private static final List<Shown> SHOWN = List.of(
            new Shown("price_usd", "price", Numbers::usd),
            new Shown("crew_days", "crew days", days -> Numbers.plain(days, 1)),
            new Shown("leak_probability", "chance of leak damage", chance -> Numbers.percent(chance, 1)),
            new Shown("horizon_cost_usd_mean", "price, leak damage and glass lost", Numbers::usd));

    List<String> lines(List<ChangedRow> rows, List<HouseMove> moves, Optional<Parts> parts) {
        return Stream.of(
                        runs(),
                        reasons(),
                        rows(rows),
                        means(),
                        houses(moves),
                        parts.map(this::parts).orElse(List.of()))
                .flatMap(List::stream)
                .toList();
    }

    private List<String> runs() {
        List<String> lines = new ArrayList<>();
        lines.add("The two reports differ.");
        if (!was.run().version().equals(is.run().version())) {
            lines.add("version: " + was.run().version() + TO + is.run().version());
        }
        for (String name : RunFile.differing(was.run().settings(), is.run().settings())) {
            lines.add(name + ": " + setting(was, name) + TO + setting(is, name));
        }
        for (String name : RunFile.differing(was.run().inputs(), is.run().inputs())) {
            lines.add("read: " + name + " is not the same");
        }
        return lines;
    }

    private static String setting(EarlierReport report, String name) {
        return report.run().settings().getOrDefault(name, "(not said)");
    }

    private List<String> reasons() {
        if (was.run().version().equals(is.run().version())) {
            return List.of();
        }
        List<String> reasons = ChangeLog.since(was.run().version(), log);
        return reasons.isEmpty()
                ? List.of()
                : Stream.concat(
                                Stream.of("", "What changed in the program since then:"),
                                reasons.stream().map(line -> "  " + line))
                        .toList();
    }

    private static List<String> rows(List<ChangedRow> rows) {
        if (rows.isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("Assumptions that differ: " + Numbers.count(rows.size(), "row", "rows"));
        rows.stream().limit(MOST_ROWS).forEach(row -> lines.add("  " + row.key() + ": " + row.change()));
        if (rows.size() > MOST_ROWS) {
            lines.add("  and " + Numbers.count(rows.size() - MOST_ROWS, "more row", "more rows"));
        }
        return lines;
    }

    private List<String> means() {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("The average house done by one method:");
        for (Method method : Method.values()) {
            for (Shown shown : SHOWN) {
                OptionalDouble then = was.houses().mean(shown.column, "method", method.word());
                OptionalDouble now = is.houses().mean(shown.column, "method", method.word());
                if (then.isPresent() && now.isPresent()) {
                    lines.add("  " + method.label() + ", " + shown.words + ": " + shown.number.apply(then.getAsDouble())
                            + TO + shown.number.apply(now.getAsDouble()));
                }
            }
        }
        return lines;
    }

    private List<String> houses(List<HouseMove> moves) {
        List<HouseMove> flipped =
                moves.stream().filter(move -> !move.keepsPlan()).toList();
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("Houses in both: " + Numbers.plain(moves.size(), 0) + "; the family's plan changes in "
                + Numbers.plain(flipped.size(), 0));
        flipped.stream()
                .limit(MOST_HOUSES)
                .forEach(move -> lines.add("  " + named(move) + ": "
                        + move.before().plan() + TO + move.after().plan()));
        List<HouseMove> costlier = moves.stream()
                .filter(move -> move.keepsPlan() && move.costChangeUsd() != 0)
                .limit(MOST_HOUSES)
                .toList();
        if (!costlier.isEmpty()) {
            lines.add("Largest changes in cost where the plan stays the same:");
            costlier.forEach(move -> lines.add("  " + named(move) + ": " + usd(move.before()) + TO + usd(move.after())
                    + " (" + Numbers.signedUsd(move.costChangeUsd()) + ")"));
        }
        return lines;
    }

    private static String named(HouseMove move) {
        return move.houseId() + (move.label().isEmpty() ? "" : " " + move.label());
    }

    private static String usd(HouseMove.Side side) {
        return Numbers.usd(side.costUsd().orElse(Double.NaN));
    }

    private List<String> parts(Parts parts) {
        Contrast pair = is.assumptions().orElseThrow().assumptions().scenario().contrast();
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("What " + pair.first().inSentence() + " costs more than "
                + pair.second().inSentence()
                + ", average house, over the years looked at: "
                + Numbers.signedUsd(parts.before().differenceUsd()) + TO
                + Numbers.signedUsd(parts.after().differenceUsd()));
        lines.add("Of that change, by row (alone; its share of the whole):");
        parts.parts()
                .forEach(part -> lines.add("  " + part.name() + ": "
                        + Numbers.signedUsd(part.alone().differenceUsd()) + "; "
                        + Numbers.signedUsd(part.share().differenceUsd())));
        return lines;
    }
}
