package weatherlap.reports.spark;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.stream.Stream;
import org.apache.spark.sql.Row;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.Portfolio;

/** Some houses in a row, as lines of the three tables. */
record SomeHouses(List<HouseText> houses, List<String> headers) {
    /** The lines of one house: its own, those of its walls and those of their openings. */
    record HouseText(String id, List<StringBuilder> tables) {}

    /** Takes sorted lines apart, so many houses at a time. */
    static Iterator<SomeHouses> each(Iterator<Row> lines, List<String> headers, int many) {
        return new Iterator<>() {
            private Row next = lines.hasNext() ? lines.next() : null;

            @Override
            public boolean hasNext() {
                return next != null;
            }

            @Override
            public SomeHouses next() {
                if (next == null) {
                    throw new NoSuchElementException();
                }
                List<HouseText> houses = new ArrayList<>();
                while (next != null && houses.size() < many) {
                    houses.add(house());
                }
                return new SomeHouses(houses, headers);
            }

            private HouseText house() {
                String id = id(next);
                HouseText house = new HouseText(
                        id, Stream.generate(StringBuilder::new).limit(3).toList());
                while (next != null && id(next).equals(id)) {
                    house.tables().get(next.getInt(1)).append(next.getString(2)).append('\n');
                    next = lines.hasNext() ? lines.next() : null;
                }
                return house;
            }
        };
    }

    private static String id(Row line) {
        return line.isNullAt(0) ? "" : line.getString(0);
    }

    /** The houses, read as {@code compare} reads a folder, or every problem of them. */
    Loaded<Portfolio> read(Assumptions assumptions) {
        return read(houses, assumptions);
    }

    private Loaded<Portfolio> read(List<HouseText> some, Assumptions assumptions) {
        Map<String, String> texts = new HashMap<>();
        for (int table = 0; table < headers.size(); table++) {
            StringBuilder text = new StringBuilder(headers.get(table)).append('\n');
            for (HouseText house : some) {
                text.append(house.tables().get(table));
            }
            texts.put(PortfolioTables.FILES.get(table), text.toString());
        }
        return Portfolios.read(Folder.of(texts), assumptions);
    }

    /** Of houses that cannot be read: every problem with its house; rows are counted among those of the house, its header first. */
    List<String> problems(Assumptions assumptions) {
        return houses.stream()
                .flatMap(house -> read(List.of(house), assumptions).errors().stream()
                        .map(problem -> "house " + house.id() + ": " + problem))
                .toList();
    }
}
