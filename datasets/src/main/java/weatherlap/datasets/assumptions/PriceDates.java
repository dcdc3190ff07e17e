package weatherlap.datasets.assumptions;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.explain.EarlierSource;

/**
 * Of which years the prices and wages of the tables are, and what they are in another: a row's price times the index of that year over the
 * index of its own. A row without a year, or of a year that the index does not know, stands as it is and is told of. Single numbers of
 * {@code scenario.toml} have no year and are not carried.
 */
public final class PriceDates {
    /** The change that names a year: {@code as_of=YEAR}. */
    static final String CHANGE = "as_of=";

    private static final String YEAR = "price_year";
    private static final String OPTION = "--as-of";
    private static final int EARLIEST = 1900;
    private static final int LATEST = 2200;

    /** Prices that lie further back than others by more years are called old: judgement, it only warns. */
    private static final int OLD_YEARS = 3;

    private PriceDates() {}

    /**
     * The years of a group of prices.
     *
     * @param rows how many rows are of each
     * @param undated rows of which nobody knows
     */
    public record Years(PriceGroup group, SortedMap<Integer, Integer> rows, int undated) {}

    /** The year that changes carry the tables to, as it was typed: the last one they name. Tables carried there already stay as they are. */
    public static Optional<String> asked(List<String> changes) {
        return changes.stream()
                .filter(change -> change.startsWith(CHANGE))
                .map(change -> change.substring(CHANGE.length()))
                .reduce((earlier, later) -> later);
    }

    /** Those of tables, group by group. */
    public static List<Years> of(AssumptionTables tables) {
        List<Years> all = new ArrayList<>();
        for (PriceGroup group : PriceGroup.values()) {
            SortedMap<Integer, Integer> rows = new TreeMap<>();
            int undated = 0;
            for (Row row : rows(tables, group)) {
                if (row.has(YEAR)) {
                    rows.merge(row.whole(YEAR), 1, Integer::sum);
                } else {
                    undated++;
                }
            }
            all.add(new Years(group, rows, undated));
        }
        return all;
    }

    /** Groups of prices that lie far behind the newest in the tables, a sentence each. */
    public static List<String> old(AssumptionTables tables) {
        List<Years> all = of(tables);
        OptionalInt newest = all.stream()
                .flatMap(years -> years.rows().keySet().stream())
                .mapToInt(year -> year)
                .max();
        List<String> old = new ArrayList<>();
        for (Years years : all) {
            int behind = years.rows().headMap(newest.orElse(0) - OLD_YEARS).values().stream()
                    .mapToInt(count -> count)
                    .sum();
            if (behind > 0) {
                old.add(years.group().table().file() + ": " + behind + (behind == 1 ? " row is" : " rows are") + " of "
                        + years.rows().firstKey() + " or later, more than " + OLD_YEARS
                        + " years behind the newest price of the tables (" + newest.getAsInt() + "); " + OPTION + " "
                        + newest.getAsInt() + " carries them by " + PriceIndex.FILE);
            }
        }
        return old;
    }

    private static List<Row> rows(AssumptionTables tables, PriceGroup group) {
        String text = tables.texts().get(group.table().file());
        return TextTable.read(Source.of(group.table().file(), text), group.table(), new Problems())
                .map(table -> table.soundRows().toList())
                .orElse(List.of());
    }

    /** The tables in prices of a year, which their rows then name; what keeps them from it is reported. */
    static AssumptionTables at(AssumptionTables tables, String asked, Problems problems) {
        int year = asked.matches("\\d{4}") ? Integer.parseInt(asked) : 0;
        if (year < EARLIEST || year > LATEST) {
            problems.error(
                    OPTION, Quoted.of(asked) + " is not a year (" + EARLIEST + " to " + LATEST + ", four digits)");
            return tables;
        }
        String text = tables.texts().get(PriceIndex.FILE);
        if (text == null) {
            problems.error(
                    OPTION,
                    "the assumptions hold no " + PriceIndex.FILE
                            + "; `weatherlap assumptions` writes one to begin with");
            return tables;
        }
        PriceIndex index = PriceIndex.read(text, new Problems());
        if (!index.knows(year)) {
            problems.error(
                    OPTION,
                    PriceIndex.FILE + " knows " + index.years() + "; add rows of " + year + " and their source");
            return tables;
        }
        Map<String, String> texts = new LinkedHashMap<>(tables.texts());
        for (PriceGroup group : PriceGroup.values()) {
            texts.computeIfPresent(
                    group.table().file(), (file, before) -> carried(before, group, year, index, problems));
        }
        return AssumptionTables.read(texts, problems).orElse(tables);
    }

    private static String carried(String text, PriceGroup group, int year, PriceIndex index, Problems problems) {
        List<String> standing = new ArrayList<>();
        String carried = RowText.replace(text, group.table(), row -> {
            OptionalDouble factor = row.has(YEAR) ? index.factor(group, row.whole(YEAR), year) : OptionalDouble.empty();
            if (factor.isEmpty()) {
                standing.add(row.key(group.table()) + (row.has(YEAR) ? " (" + row.text(YEAR) + ")" : ""));
                return Map.of();
            }
            return row.whole(YEAR) == year ? Map.of() : cells(row, group, year, factor.getAsDouble());
        });
        if (!standing.isEmpty()) {
            problems.warning(
                    group.table().file(),
                    0,
                    YEAR,
                    standing.size() + (standing.size() == 1 ? " row stands" : " rows stand")
                            + " as they are: without a year, or of one that " + PriceIndex.FILE
                            + " does not know, such as " + standing.get(0));
        }
        return carried;
    }

    private static Map<String, String> cells(Row row, PriceGroup group, int year, double factor) {
        Map<String, String> cells = new HashMap<>();
        group.columns().forEach(column -> cells.put(column, rounded(row.number(column) * factor)));
        cells.put(YEAR, Integer.toString(year));
        cells.put(
                "source",
                "× " + rounded(factor) + " from " + row.text(YEAR) + " by " + PriceIndex.FILE
                        + EarlierSource.of(row.text("source")));
        return cells;
    }

    private static String rounded(double number) {
        return CsvText.cell(Math.rint(number * 1e4) / 1e4);
    }
}
