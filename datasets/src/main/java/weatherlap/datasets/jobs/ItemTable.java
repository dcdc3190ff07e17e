package weatherlap.datasets.jobs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Material;

/** {@code job-items.csv}, which may stand beside {@code jobs.csv}: what was estimated, used and paid of each item. */
public final class ItemTable {
    /** Name of the table. */
    public static final String FILE = "job-items.csv";

    private static final double MOST = 1e6;

    public static final Schema ITEMS = new Schema(
            FILE,
            "items bought for finished jobs, one a row",
            List.of(
                    Column.key("job_id", "as in jobs.csv"),
                    Column.key("item_id", "as in materials.csv, or " + JobItem.UNITS),
                    Column.number("estimated_packages", "packages", 0, MOST, "before the work; units: how many")
                            .optional(),
                    Column.number(
                                    "used_packages",
                                    "packages",
                                    0,
                                    MOST,
                                    "bought less what came back; half a tube is 0.5; units: how many")
                            .optional(),
                    Column.number("paid_usd", "USD", 0, 1e7, "for the packages used")
                            .optional()),
            List.of("job_id", "item_id"),
            false);

    private ItemTable() {}

    /** Items by job; a job that is not known is warned of, an item that is not is an error. */
    static Map<String, List<JobItem>> read(
            Source source, Set<String> jobs, Assumptions assumptions, Problems problems) {
        List<String> known = new ArrayList<>(
                assumptions.materials().stream().map(Material::id).toList());
        known.add(JobItem.UNITS);
        Set<String> items = Set.copyOf(known);
        Map<String, List<JobItem>> byJob = new HashMap<>();
        TextTable.read(source, ITEMS, problems)
                .ifPresent(table -> table.soundRows().forEach(row -> {
                    String item = row.text("item_id");
                    if (!items.contains(item)) {
                        row.error(
                                problems,
                                "item_id",
                                Quoted.of(item) + " is no item of materials.csv" + Nearest.hint(item, known));
                    } else if (!jobs.contains(row.text("job_id"))) {
                        row.warning(
                                problems,
                                "job_id",
                                Quoted.of(row.text("job_id")) + " is not a job of jobs.csv; the item is left out");
                    } else {
                        byJob.computeIfAbsent(row.text("job_id"), id -> new ArrayList<>())
                                .add(item(row));
                    }
                }));
        return byJob;
    }

    private static JobItem item(Row row) {
        return new JobItem(
                row.text("item_id"),
                row.optionalNumber("estimated_packages"),
                row.optionalNumber("used_packages"),
                row.optionalNumber("paid_usd"));
    }

    /** The table of the items of all jobs. */
    public static String text(List<JobRecord> jobs) {
        return CsvText.line(ITEMS.names())
                + jobs.stream()
                        .flatMap(job -> job.money().items().stream()
                                .map(item -> CsvText.line(List.of(
                                        job.id(),
                                        item.id(),
                                        CsvText.cell(item.estimated()),
                                        CsvText.cell(item.used()),
                                        CsvText.cell(item.paidUsd())))))
                        .collect(Collectors.joining());
    }
}
