package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import weatherlap.datasets.jobs.ItemTable;
import weatherlap.reports.inputs.TableNames;
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

    /** The folders of houses and assumptions, and of records where there are any, as {@link #shown} asks for them. */
    static Map<String, Path> folders(Optional<Path> portfolio, Optional<Path> assumptions, Optional<Path> records) {
        Map<String, Path> folders = new HashMap<>();
        portfolio.ifPresent(folder -> folders.put("portfolio", folder));
        assumptions.ifPresent(folder -> folders.put("assumptions", folder));
        records.ifPresent(folder -> folders.put("jobs", folder));
        return folders;
    }

    /**
     * What the results depend on, name and value.
     *
     * @param own settings of the command, in words
     * @param folders that were named, by the kind of table under which a sum stands
     */
    static Map<String, String> shown(
            Map<String, String> own, List<String> changes, SortedMap<String, String> sums, Map<String, Path> folders) {
        Map<String, String> shown = new LinkedHashMap<>();
        shown.put("program", "weatherlap " + Version.current());
        shown.putAll(own);
        if (!changes.isEmpty()) {
            shown.put("changes", String.join(", ", changes));
        }
        sums.forEach((file, sum) -> shown.put(TableNames.ofSum(file, folders), "SHA-256 " + sum));
        return shown;
    }
}
