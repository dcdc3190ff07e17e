package weatherlap.reports.offer;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.analysis.plan.PlanSums;
import weatherlap.datasets.shop.Terms;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.PlanDays;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Wall;

/**
 * What a page needs to tell price, days, glass and leaks of any choice of methods by adding up: for each wall what each of the ways to do
 * it adds to price and days (its windows share siding, so that this is no sum over them), for the house what each set of methods adds
 * once. Prices alone stand in it, and none where the sheet tells none.
 *
 * @param walls their rows to tick, wall by wall
 * @param data for the page's script
 */
public record TickTable(List<List<TickRow>> walls, Map<String, Object> data) {
    /** So fine that no sum of a house is rounded to another dollar or tenth than it would be whole. */
    private static final int DECIMALS = 7;

    public TickTable {
        walls = List.copyOf(walls);
    }

    /** @param each the house by every method that it is open to */
    public static TickTable of(Choices choices, Map<Method, HouseTakeoff> each, Prices prices) {
        PlanParts days = PlanDays.spread(each);
        PlanParts full = PlanDays.full(each);
        TickRows rows = new TickRows(choices, each);
        List<List<TickRow>> walls = new ArrayList<>();
        int first = 0;
        for (Wall wall : choices.parts().walls()) {
            walls.add(rows.of(wall, first));
            first += wall.openings().size();
        }
        House house = choices.choice().result().house();
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("signs", ChoiceLine.signs(house));
        data.put("windows", house.openingCount());
        data.put(
                "letters",
                Arrays.stream(Method.values())
                        .map(m -> "" + ChoiceLine.letter(m))
                        .toList());
        data.put("glassToday", rounded(choices.all().get(0).glassTodayFt2()));
        data.put("leaks", leaks(choices.leaks()));
        if (prices.shown()) {
            data.put("terms", terms(prices.terms()));
            data.put("usd", bySet(choices.parts().setupUsd(), each.keySet()));
        }
        data.put("days", bySet(days.setupUsd(), each.keySet()));
        data.put("full", bySet(full.setupUsd(), each.keySet()));
        data.put("walls", walls(choices, List.of(days, full), walls, prices.shown()));
        data.put("known", known(choices));
        return new TickTable(walls, data);
    }

    /** Where the ranks end, in units of the most that the house can come to. */
    private static Map<String, Object> leaks(LeakSpan span) {
        Map<String, Object> leaks = new LinkedHashMap<>();
        leaks.put("least", rounded(span.most() == 0 ? 0 : span.least() / span.most()));
        leaks.put("tells", span.tells());
        leaks.put(
                "upTo",
                Arrays.stream(LeakRank.values())
                        .filter(rank -> Double.isFinite(rank.upTo()))
                        .map(rank -> rounded(rank.upTo()))
                        .toList());
        return leaks;
    }

    private static Map<String, Object> terms(Terms terms) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("round", BigDecimal.valueOf(terms.roundToUsd().orElse(1)));
        data.put(
                "discount",
                BigDecimal.valueOf(terms.discount().map(Terms.Rate::share).orElse(0.0)));
        data.put("tax", BigDecimal.valueOf(terms.tax().map(Terms.Rate::share).orElse(0.0)));
        return data;
    }

    /** By set of methods, counted as {@link PlanParts} does; those that the house is not open to are left out. */
    private static Map<String, Object> bySet(double[] sums, Set<Method> open) {
        int all = PlanParts.mask(open);
        Map<String, Object> bySet = new LinkedHashMap<>();
        for (int set = 1; set < sums.length; set++) {
            if ((set & ~all) == 0) {
                bySet.put(Integer.toString(set), rounded(sums[set]));
            }
        }
        return bySet;
    }

    private static List<Object> walls(Choices choices, List<PlanParts> time, List<List<TickRow>> rows, boolean priced) {
        List<Object> walls = new ArrayList<>();
        for (int w = 0; w < rows.size(); w++) {
            List<List<Method>> ways = ways(rows.get(w));
            Map<String, Object> wall = new LinkedHashMap<>();
            wall.put(
                    "rows",
                    rows.get(w).stream()
                            .map(row -> row(row, choices.leaks().most()))
                            .toList());
            if (priced) {
                wall.put("usd", sums(choices.parts().walls().get(w), ways));
            }
            wall.put("days", sums(time.get(0).walls().get(w), ways));
            wall.put("full", sums(time.get(1).walls().get(w), ways));
            walls.add(wall);
        }
        return walls;
    }

    private static List<BigDecimal> sums(Wall wall, List<List<Method>> ways) {
        return ways.stream().map(way -> rounded(PlanSums.wallUsd(wall, way))).toList();
    }

    private static Map<String, Object> row(TickRow row, double most) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("at", row.at());
        data.put("methods", row.methods().stream().map(Method::ordinal).toList());
        data.put("glass", row.glassFt2().stream().map(TickTable::rounded).toList());
        data.put(
                "leaks",
                row.leaks().stream()
                        .map(leaks -> rounded(most == 0 ? 0 : leaks / most))
                        .toList());
        return data;
    }

    /** Every way to tick the rows of a wall, as methods of its windows in their order; the last row turns fastest. */
    private static List<List<Method>> ways(List<TickRow> rows) {
        int first = rows.stream()
                .flatMap(row -> row.at().stream())
                .mapToInt(at -> at)
                .min()
                .orElse(0);
        int windows = rows.stream().mapToInt(row -> row.at().size()).sum();
        List<List<Method>> ways = new ArrayList<>();
        int count = rows.stream().mapToInt(row -> row.methods().size()).reduce(1, (a, b) -> a * b);
        for (int way = 0; way < count; way++) {
            Method[] methods = new Method[windows];
            int rest = way;
            for (int r = rows.size() - 1; r >= 0; r--) {
                TickRow row = rows.get(r);
                Method ticked = row.methods().get(rest % row.methods().size());
                rest /= row.methods().size();
                row.at().forEach(at -> methods[at - first] = ticked);
            }
            ways.add(List.of(methods));
        }
        return ways;
    }

    /** The choices of the sheet, with the days that their own day plan has. */
    private static List<Object> known(Choices choices) {
        return choices.all().stream()
                .map(choice -> {
                    Map<String, Object> known = new LinkedHashMap<>();
                    known.put(
                            "methods",
                            choice.methods().stream().map(Method::ordinal).toList());
                    known.put("days", choice.days());
                    return (Object) known;
                })
                .toList();
    }

    /** Whether the rows can be ticked as a choice has it. */
    public boolean holds(List<Method> methods) {
        return walls.stream()
                .flatMap(List::stream)
                .allMatch(row -> row.methods().contains(methods.get(row.at().get(0)))
                        && row.at().stream().map(methods::get).distinct().count() == 1);
    }

    /** Whether some windows are ticked together. */
    public boolean together() {
        return walls.stream().flatMap(List::stream).anyMatch(row -> row.at().size() > 1);
    }

    private static BigDecimal rounded(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    }
}
