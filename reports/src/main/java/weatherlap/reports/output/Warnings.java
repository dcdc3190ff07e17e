package weatherlap.reports.output;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.datasets.table.Problem;

/** Warnings for people: what is said of many rows is said once. */
public final class Warnings {
    private Warnings() {}

    public static List<String> grouped(List<Problem> warnings) {
        Map<Problem, List<Problem>> groups = new LinkedHashMap<>();
        for (Problem warning : warnings) {
            groups.computeIfAbsent(
                            new Problem(warning.file(), 0, warning.column(), warning.message()),
                            key -> new ArrayList<>())
                    .add(warning);
        }
        return groups.values().stream()
                .map(group -> group.get(0) + (group.size() == 1 ? "" : " (and in " + (group.size() - 1) + " more)"))
                .toList();
    }
}
