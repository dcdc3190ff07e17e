package weatherlap.reports.offer;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import weatherlap.analysis.plan.PlanSums;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/**
 * The windows of a wall as rows to tick: each by itself as long as the wall has no more than {@link #MOST} ways to be done; else like
 * windows together, and as a last resort by the two methods alone that are set side by side, and neighbors together.
 */
record TickRows(Choices choices, Map<Method, HouseTakeoff> each) {
    /** Ways to do a wall that a page holds the price of. */
    static final int MOST = 512;

    /** @param first position of the wall's first window in the house */
    List<TickRow> of(Wall wall, int first) {
        List<List<Integer>> alone = grouped(wall, o -> o);
        if (ways(wall, alone, first) <= MOST) {
            return rows(wall, alone, first, EnumSet.allOf(Method.class));
        }
        List<List<Integer>> alike = grouped(wall, o -> like(wall.openings().get(o)));
        Set<Method> both = EnumSet.copyOf(choices.choice().result().contrast().both());
        if (ways(wall, alike, first) <= MOST) {
            return rows(wall, alike, first, EnumSet.allOf(Method.class));
        }
        while (Math.pow(2, alike.size()) > MOST) {
            alike = neighbors(wall, alike, first, both);
        }
        return rows(wall, alike, first, both);
    }

    private static List<List<Integer>> grouped(Wall wall, Function<Integer, Object> by) {
        Map<Object, List<Integer>> groups = new LinkedHashMap<>();
        for (int o = 0; o < wall.openings().size(); o++) {
            groups.computeIfAbsent(by.apply(o), key -> new ArrayList<>()).add(o);
        }
        return new ArrayList<>(groups.values());
    }

    private Object like(Part part) {
        Opening opening = part.opening();
        return List.of(
                opening.operation(),
                opening.newOperation(),
                opening.units(),
                opening.frame(),
                part.ways().stream().map(Way::method).toList());
    }

    /** The first row and the next with which it shares a method are made one. */
    private List<List<Integer>> neighbors(Wall wall, List<List<Integer>> rows, int first, Set<Method> among) {
        for (int r = 0; r + 1 < rows.size(); r++) {
            List<Integer> joined = new ArrayList<>(rows.get(r));
            joined.addAll(rows.get(r + 1));
            if (!open(wall, joined, first, among).isEmpty()) {
                List<List<Integer>> fewer = new ArrayList<>(rows.subList(0, r));
                fewer.addAll(rows.subList(r + 2, rows.size()));
                fewer.add(joined);
                return fewer;
            }
        }
        throw new IllegalStateException("a wall has too many windows that share no method");
    }

    private double ways(Wall wall, List<List<Integer>> rows, int first) {
        double ways = 1;
        for (List<Integer> row : rows) {
            int open = open(wall, row, first, EnumSet.allOf(Method.class)).size();
            ways = open == 0 ? Double.POSITIVE_INFINITY : ways * open;
        }
        return ways;
    }

    private List<Method> open(Wall wall, List<Integer> row, int first, Set<Method> among) {
        EnumSet<Method> open = EnumSet.noneOf(Method.class);
        wall.openings().get(row.get(0)).ways().forEach(way -> open.add(way.method()));
        open.retainAll(among);
        row.forEach(o -> open.removeAll(choices.choice().closed().get(first + o).keySet()));
        return List.copyOf(open);
    }

    private List<TickRow> rows(Wall wall, List<List<Integer>> rows, int first, Set<Method> among) {
        return rows.stream()
                .map(row -> row(wall, row, first, open(wall, row, first, among)))
                .toList();
    }

    private TickRow row(Wall wall, List<Integer> row, int first, List<Method> methods) {
        Map<Method, Double> leaks = new EnumMap<>(Method.class);
        row.forEach(o -> wall.openings()
                .get(o)
                .ways()
                .forEach(way -> leaks.merge(way.method(), PlanSums.leaks(way), Double::sum)));
        return new TickRow(
                row.stream().map(o -> first + o).toList(),
                methods,
                methods.stream().map(method -> glassFt2(method, row, first)).toList(),
                methods.stream().map(leaks::get).toList());
    }

    private double glassFt2(Method method, List<Integer> row, int first) {
        return row.stream()
                .mapToDouble(o -> each.get(method)
                        .openings()
                        .get(first + o)
                        .geometry()
                        .replaced()
                        .glassFt2())
                .sum();
    }
}
