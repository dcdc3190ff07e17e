package weatherlap.datasets.jobs;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Fact;

/** Writes job records as CSV that reads back as the same. */
public final class JobText {
    private JobText() {}

    /** The records with every column that holds anything. */
    public static String of(List<JobRecord> jobs, Assumptions assumptions) {
        Schema schema = JobSchema.of("jobs.csv", assumptions);
        List<Map<String, String>> rows = jobs.stream().map(JobText::cells).toList();
        List<String> columns = schema.columns().stream()
                .filter(c -> !c.mayBeEmpty()
                        || rows.stream()
                                .anyMatch(row -> !row.getOrDefault(c.name(), "").isEmpty()))
                .map(c -> c.name())
                .toList();
        Stream<List<String>> lines = rows.stream()
                .map(row -> columns.stream().map(c -> row.getOrDefault(c, "")).toList());
        return Stream.concat(Stream.of(columns), lines).map(CsvText::line).collect(Collectors.joining());
    }

    private static Map<String, String> cells(JobRecord job) {
        Map<String, String> cells = new HashMap<>();
        cells.put("job_id", job.id());
        cells.put("date", job.date().map(Object::toString).orElse(""));
        cells.put("house_id", job.houseId().orElse(""));
        cells.put("method", CsvText.cell(job.method()));
        cells.put("crew", job.crew().orElse(""));
        cells.put("openings", Integer.toString(job.openings()));
        JobSchema.QUANTITIES.forEach(
                (driver, column) -> cells.put(column, CsvText.cell(job.counted().of(driver))));
        cells.put("temperature_f", CsvText.cell(job.temperatureF()));
        cells.put("person_hours", CsvText.cell(job.personHours()));
        cells.put("finished", job.finished().map(Object::toString).orElse(""));
        cells.put("followed_until", job.followedUntil().map(Object::toString).orElse(""));
        JobMoney money = job.money();
        cells.put("price_usd", CsvText.cell(money.priceUsd()));
        cells.put("quoted_usd", CsvText.cell(money.quotedUsd()));
        cells.put("estimated_material_usd", CsvText.cell(money.estimatedMaterialUsd()));
        cells.put("material_usd", CsvText.cell(money.materialUsd()));
        for (Fact fact : Fact.ofWork()) {
            cells.put(fact.key(), job.facts().getOrDefault(fact, ""));
        }
        job.stepMinutes().forEach((step, minutes) -> cells.putIfAbsent(step, CsvText.cell(minutes)));
        return cells;
    }
}
