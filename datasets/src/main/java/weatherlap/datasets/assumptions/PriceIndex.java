package weatherlap.datasets.assumptions;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;

/**
 * {@code price-index.csv}, which an assumption folder may hold: what a group of prices cost in one year over another.
 *
 * @param byGroup index by year, of each group
 */
record PriceIndex(Map<PriceGroup, SortedMap<Integer, Double>> byGroup) {
    static final String FILE = AssumptionSchemas.PRICE_INDEX.file();

    /** Every problem of the table is reported. */
    static PriceIndex read(String text, Problems problems) {
        Map<PriceGroup, SortedMap<Integer, Double>> byGroup = new EnumMap<>(PriceGroup.class);
        TextTable.read(Source.of(FILE, text), AssumptionSchemas.PRICE_INDEX, problems)
                .ifPresent(table -> table.soundRows().forEach(row -> put(row, byGroup)));
        return new PriceIndex(byGroup);
    }

    private static void put(Row row, Map<PriceGroup, SortedMap<Integer, Double>> byGroup) {
        byGroup.computeIfAbsent(row.word("price_group", PriceGroup.class), group -> new TreeMap<>())
                .put(row.whole("year"), row.number("price_index"));
    }

    /** What a price of one year is in another; empty where the table does not know one of them. */
    OptionalDouble factor(PriceGroup group, int from, int to) {
        if (from == to) {
            return OptionalDouble.of(1);
        }
        SortedMap<Integer, Double> years = byGroup.getOrDefault(group, new TreeMap<>());
        return years.containsKey(from) && years.containsKey(to)
                ? OptionalDouble.of(years.get(to) / years.get(from))
                : OptionalDouble.empty();
    }

    boolean knows(int year) {
        return byGroup.values().stream().anyMatch(years -> years.containsKey(year));
    }

    /** The years of each group, for a message. */
    String years() {
        List<String> groups = new ArrayList<>();
        byGroup.forEach((group, years) -> groups.add(group.word() + " of "
                + years.keySet().stream().map(Object::toString).collect(Collectors.joining(", "))));
        return groups.isEmpty() ? "no year" : String.join("; ", groups);
    }
}
