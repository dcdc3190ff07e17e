package weatherlap.analysis.choice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where in a portfolio each method pays, over two facts.
 *
 * @param across classes along a row
 * @param up classes from row to row
 * @param cells by row, then along it
 */
public record PortfolioMap(List<String> across, List<String> up, List<List<Cell>> cells) {
    public PortfolioMap {
        across = List.copyOf(across);
        up = List.copyOf(up);
        cells = cells.stream().map(List::copyOf).toList();
    }

    /**
     * The cases of two classes.
     *
     * @param differenceUsd first less second, mean over the cases, USD; 0 without cases
     * @param shareFirst share of them that are better off with the first method; 0 without cases
     */
    public record Cell(int cases, double differenceUsd, double shareFirst) {}

    /**
     * Sorts cases into classes.
     *
     * @param across the class of each case along a row; the map keeps the order in which they are listed first in {@code acrossOrder}
     * @param differenceUsd of each case
     */
    static PortfolioMap of(
            List<String> across,
            List<String> acrossOrder,
            List<String> up,
            List<String> upOrder,
            double[] differenceUsd) {
        List<String> columns = present(acrossOrder, across);
        List<String> rows = present(upOrder, up);
        List<List<Cell>> cells = new ArrayList<>();
        for (String row : rows) {
            cells.add(columns.stream()
                    .map(column -> cell(IntStream.range(0, differenceUsd.length)
                            .filter(c -> up.get(c).equals(row) && across.get(c).equals(column))
                            .mapToDouble(c -> differenceUsd[c])
                            .toArray()))
                    .toList());
        }
        return new PortfolioMap(columns, rows, cells);
    }

    private static List<String> present(List<String> order, List<String> classes) {
        LinkedHashSet<String> present = new LinkedHashSet<>(order);
        present.addAll(classes);
        present.retainAll(new LinkedHashSet<>(classes));
        return List.copyOf(present);
    }

    private static Cell cell(double[] differences) {
        if (differences.length == 0) {
            return new Cell(0, 0, 0);
        }
        double sum = 0;
        int first = 0;
        for (double difference : differences) {
            sum += difference;
            first += difference < 0 ? 1 : 0;
        }
        return new Cell(differences.length, sum / differences.length, (double) first / differences.length);
    }
}
