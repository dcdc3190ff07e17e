package weatherlap.reports.diff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
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
                        rows(rows),
                        means(),
                        houses(moves),
                        parts.map(this::parts).orElse(List.of()),
                        reasons())
                .flatMap(List::stream)
                .toList();
    }

    private List<String> runs() {
        List<String> lines = new ArrayList<>();
        lines.add("The two reports differ.");
        if (!sameVersion()) {
            lines.add("version: " + was.run().version() + TO + is.run().version());
        }
        Map<String, String> then = was.run().settings();
        Map<String, String> now = is.run().settings();
        for (String name : RunFile.differing(then, now)) {
            // what a version does not record it did not know, either
            if (sameVersion() || then.containsKey(name) && now.containsKey(name)) {
                lines.add(name + ": " + then.getOrDefault(name, "(not said)") + TO
                        + now.getOrDefault(name, "(not said)"));
            }
        }
        for (String name : RunFile.differing(was.run().inputs(), is.run().inputs())) {
            lines.add("read: " + name + read(name));
        }
        return lines;
    }

    private boolean sameVersion() {
        return was.run().version().equals(is.run().version());
    }

    private String read(String input) {
        if (!was.run().inputs().containsKey(input)) {
            return ", by the later alone";
        }
        return is.run().inputs().containsKey(input) ? " is not the same" : ", by the earlier alone";
    }

    private List<String> reasons() {
        if (sameVersion()) {
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
        lines.add("The average house done by one method, over the houses that have it in both reports:");
        for (Method method : Method.values()) {
            Set<String> both = new TreeSet<>(was.houses().houses(method.word()));
            Set<String> either = new TreeSet<>(both);
            either.addAll(is.houses().houses(method.word()));
            both.retainAll(is.houses().houses(method.word()));
            if (!both.isEmpty()) {
                int alone = either.size() - both.size();
                lines.add("  " + method.label() + ", " + Numbers.count(both.size(), "house", "houses")
                        + (alone == 0 ? ":" : " (" + Numbers.plain(alone, 0) + " more in one report alone):"));
                SHOWN.forEach(shown -> mean(shown, method, both).ifPresent(lines::add));
            }
        }
        return lines;
    }

    private Optional<String> mean(Shown shown, Method method, Set<String> houses) {
        OptionalDouble then = was.houses().mean(shown.column, method.word(), houses);
        OptionalDouble now = is.houses().mean(shown.column, method.word(), houses);
        return then.isEmpty() || now.isEmpty()
                ? Optional.empty()
                : Optional.of("    " + shown.words + ": " + shown.number.apply(then.getAsDouble()) + TO
                        + shown.number.apply(now.getAsDouble()));
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
        if (flipped.size() > MOST_HOUSES) {
            lines.add("  and " + Numbers.count(flipped.size() - MOST_HOUSES, "more house", "more houses")
                    + "; moves.csv, which --out writes, has all");
        }
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
