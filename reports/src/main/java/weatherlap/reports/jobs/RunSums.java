package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import weatherlap.datasets.jobs.ItemTable;
import weatherlap.reports.output.Checksum;
import weatherlap.reports.output.Version;

/** Sums of what a run of job records read, and what of them its page shows. */
final class RunSums {
    private RunSums() {}

    /** Those of job records, and of the items beside them where there are any, by the name that a run knows them by. */
    static void put(SortedMap<String, String> sums, String name, Path jobs) throws IOException {
        sums.put("jobs/" + name, Checksum.of(jobs));
        Path items = jobs.resolveSibling(ItemTable.FILE);
        if (Files.exists(items)) {
            sums.put("jobs/" + ItemTable.FILE, Checksum.of(items));
        }
    }

    /**
     * What the results depend on, name and value.
     *
     * @param own settings of the command, in words
     */
    static Map<String, String> shown(Map<String, String> own, List<String> changes, SortedMap<String, String> sums) {
        Map<String, String> shown = new LinkedHashMap<>();
        shown.put("program", "weatherlap " + Version.current());
        shown.putAll(own);
        if (!changes.isEmpty()) {
            shown.put("changes", String.join(", ", changes));
        }
        sums.forEach((file, sum) -> shown.put(file, "SHA-256 " + sum));
        return shown;
    }
}
