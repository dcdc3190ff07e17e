package weatherlap.datasets.jobs;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.method.Method;

/** Reads job records. */
public final class JobReader {
    private final Assumptions assumptions;
    private final Optional<JobHouses> houses;
    private final Problems problems = new Problems();
    /** Of values that many jobs share, the first: a hundred thousand records hold few kinds of facts and few days. */
    private final Map<Object, Object> shared = new HashMap<>();

    private JobReader(Assumptions assumptions, Optional<JobHouses> houses) {
        this.assumptions = assumptions;
        this.houses = houses;
    }

    /** The records of a file in its order, or every problem in it. */
    public static Loaded<List<JobRecord>> read(Path file, Assumptions assumptions) {
        JobReader reader = new JobReader(assumptions, Optional.empty());
        return reader.read(Folder.file(file, reader.problems), items(file));
    }

    /** The same, held against the houses that were worked on. */
    public static Loaded<List<JobRecord>> read(Path file, Assumptions assumptions, JobHouses houses) {
        JobReader reader = new JobReader(assumptions, Optional.of(houses));
        return reader.read(Folder.file(file, reader.problems), items(file));
    }

    /** The table of items beside the records, where there is one. */
    private static Optional<Source> items(Path file) {
        Path folder = file.toAbsolutePath().normalize().getParent();
        return folder == null ? Optional.empty() : Folder.of(folder).find(ItemTable.FILE, new Problems());
    }

    public static Loaded<List<JobRecord>> read(Source source, Assumptions assumptions) {
        return new JobReader(assumptions, Optional.empty()).read(Optional.of(source), Optional.empty());
    }

    static Loaded<List<JobRecord>> read(Source source, Assumptions assumptions, JobHouses houses) {
        return new JobReader(assumptions, Optional.of(houses)).read(Optional.of(source), Optional.empty());
    }

    static Loaded<List<JobRecord>> readWithItems(Source source, Source items, Assumptions assumptions) {
        return new JobReader(assumptions, Optional.empty()).read(Optional.of(source), Optional.of(items));
    }

    private Loaded<List<JobRecord>> read(Optional<Source> source, Optional<Source> items) {
        Optional<TextTable> table =
                source.flatMap(s -> TextTable.read(s, JobSchema.of(s.name(), assumptions), problems));
        Optional<List<JobRecord>> jobs = table.map(t -> {
            List<String> timed = timed(t.schema());
            if (t.size() > 1) {
                t.rows().forEach(row -> TemplateJobs.check(row, problems));
            }
            return t.soundRows().map(row -> job(row, timed)).toList();
        });
        Optional<List<JobRecord>> whole =
                jobs.map(read -> items.map(bought -> withItems(read, bought)).orElse(read));
        return Loaded.of(whole, problems);
    }

    @SuppressWarnings("unchecked")
    private <T> T shared(T value) {
        return (T) shared.computeIfAbsent(value, same -> same);
    }

    private JobRecord job(Row row, List<String> timed) {
        Map<String, Double> minutes = new LinkedHashMap<>();
        timed.stream().filter(row::has).forEach(id -> minutes.put(id, row.number(id)));
        Map<Fact, String> facts = new EnumMap<>(Fact.class);
        for (Fact fact : Fact.ofWork()) {
            if (row.has(fact.key())) {
                facts.put(fact, row.text(fact.key()));
            }
        }
        boolean money = row.has("material_usd") || row.has("quoted_usd");
        if (!row.has("person_hours") && minutes.isEmpty() && !money) {
            row.warning(problems, "person_hours", "is empty and no step was timed, so this job says nothing");
        }
        JobRecord job = new JobRecord(
                row.text("job_id"),
                shared(DateCell.of(row, "date", problems)),
                shared(text(row, "house_id")),
                row.word("method", Method.class),
                shared(text(row, "crew")),
                row.whole("openings"),
                counted(row),
                shared(row.optionalNumber("temperature_f")),
                shared(Map.copyOf(facts)),
                new JobRecord.Took(row.optionalNumber("person_hours"), minutes),
                new JobRecord.FollowUp(
                        shared(DateCell.of(row, "finished", problems)),
                        shared(DateCell.of(row, "followed_until", problems))),
                new JobMoney(
                        row.optionalNumber("quoted_usd"),
                        row.optionalNumber("price_usd"),
                        row.optionalNumber("estimated_material_usd"),
                        row.optionalNumber("material_usd"),
                        List.of()));
        houses.ifPresent(behind -> behind.check(row, job, problems));
        return job;
    }

    private List<JobRecord> withItems(List<JobRecord> jobs, Source table) {
        Set<String> known = jobs.stream().map(JobRecord::id).collect(Collectors.toSet());
        Map<String, List<JobItem>> items = ItemTable.read(table, known, assumptions, problems);
        return jobs.stream()
                .map(job -> items.containsKey(job.id()) ? job.with(job.money().with(items.get(job.id()))) : job)
                .toList();
    }

    /** Steps that have a column. They stand last; one with the name of an earlier column has none of its own. */
    private List<String> timed(Schema schema) {
        List<Fact> facts = Fact.ofWork();
        int lastFact = schema.names().indexOf(facts.get(facts.size() - 1).key());
        Set<String> columns =
                Set.copyOf(schema.names().subList(lastFact + 1, schema.names().size()));
        return assumptions.steps().stream()
                .map(LabourStep::id)
                .filter(columns::contains)
                .toList();
    }

    private JobRecord.Counted counted(Row row) {
        Map<Driver, Double> kept = new EnumMap<>(Driver.class);
        JobSchema.QUANTITIES.forEach(
                (driver, column) -> row.optionalNumber(column).ifPresent(q -> kept.put(driver, shared(q))));
        return new JobRecord.Counted(kept);
    }

    private static Optional<String> text(Row row, String column) {
        return Optional.of(row.text(column)).filter(text -> !text.isEmpty());
    }
}
