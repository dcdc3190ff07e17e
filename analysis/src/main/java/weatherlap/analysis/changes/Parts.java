package weatherlap.analysis.changes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import weatherlap.analysis.columns.Layout;
import weatherlap.sim.assumptions.Assumptions;

/**
 * What each changed row, or table of rows, does to what the houses cost.
 *
 * @param before what they cost under the rows as they were
 * @param after what they cost under the rows as they are
 * @param parts of the way from one to the other; they sum to it
 */
public record Parts(Cost before, Cost after, List<Part> parts) {
    /** {@code parts.csv}. */
    public static final Layout<Part> LAYOUT = Layout.<Part>of(
                    "parts.csv",
                    "Parts",
                    "One changed row of the assumptions, or one table where more than eight rows changed.")
            .text("changed", "changed", "table and row, or table", Part::name)
            .number("first_alone_usd", "first method, alone", "USD", 2, alone("the first method"), p -> p.alone()
                    .firstUsd())
            .number("second_alone_usd", "second method, alone", "USD", 2, alone("the second method"), p -> p.alone()
                    .secondUsd())
            .number("first_share_usd", "first method, share", "USD", 2, share("the first method"), p -> p.share()
                    .firstUsd())
            .number("second_share_usd", "second method, share", "USD", 2, share("the second method"), p -> p.share()
                    .secondUsd())
            .number(
                    "difference_share_usd",
                    "difference, share",
                    "USD",
                    2,
                    share("the first method less the second"),
                    p -> p.share().differenceUsd())
            .build();

    /**
     * Mean of a house over the years looked at, USD.
     *
     * @param firstUsd all by the first method, wherever it can be built
     * @param secondUsd all by the second
     */
    public record Cost(double firstUsd, double secondUsd) {
        public double differenceUsd() {
            return firstUsd - secondUsd;
        }

        Cost less(Cost other) {
            return new Cost(firstUsd - other.firstUsd, secondUsd - other.secondUsd);
        }
    }

    /**
     * One change.
     *
     * @param name of its row, or its table
     * @param alone what it does by itself to the rows as they were
     * @param share its mean effect over all orders in which the changes could be made
     */
    public record Part(String name, Cost alone, Cost share) {}

    public Parts {
        parts = List.copyOf(parts);
    }

    /** @param cost of the houses under assumptions; asked up to 256 times */
    public static Parts of(Exchange exchange, Function<Assumptions, Cost> cost) {
        Map<String, Set<RowKey>> groups = groups(exchange.differing());
        List<Set<RowKey>> sets = List.copyOf(groups.values());
        Cost[] worths = new Cost[1 << sets.size()];
        for (int set = 0; set < worths.length; set++) {
            worths[set] = cost.apply(exchange.taking(union(sets, set)));
        }
        Cost before = worths[0];
        List<Part> parts = new ArrayList<>();
        if (!sets.isEmpty()) {
            double[][] shares =
                    Shapley.parts(sets.size(), set -> new double[] {worths[set].firstUsd, worths[set].secondUsd});
            for (String name : groups.keySet()) {
                int i = parts.size();
                parts.add(new Part(name, worths[1 << i].less(before), new Cost(shares[i][0], shares[i][1])));
            }
        }
        return new Parts(before, worths[worths.length - 1], parts);
    }

    /** A row by itself while they are few, else a table at a time. */
    public static Map<String, Set<RowKey>> groups(Set<RowKey> rows) {
        boolean few = rows.size() <= Shapley.MOST;
        Map<String, SortedSet<RowKey>> groups = new TreeMap<>();
        rows.forEach(row -> groups.computeIfAbsent(few ? row.toString() : row.table(), name -> new TreeSet<>())
                .add(row));
        return new LinkedHashMap<>(groups);
    }

    private static Set<RowKey> union(List<Set<RowKey>> sets, int which) {
        Set<RowKey> union = new TreeSet<>();
        for (int i = 0; i < sets.size(); i++) {
            if ((which & 1 << i) != 0) {
                union.addAll(sets.get(i));
            }
        }
        return union;
    }

    private static String alone(String what) {
        return "what this change by itself adds to what a house costs by " + what + ", mean";
    }

    private static String share(String what) {
        return "its part of the whole change of what a house costs by " + what
                + ", mean over all orders of the changes";
    }
}
