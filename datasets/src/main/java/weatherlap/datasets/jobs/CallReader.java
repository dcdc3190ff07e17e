package weatherlap.datasets.jobs;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.assumptions.Assumptions;

/**
 * Reads the jobs of a folder and the service calls after them. A call of a job that is not in the records is left out with a warning,
 * as is a job without a day; what contradicts its job is an error of its row.
 */
public final class CallReader {
    private static final String JOBS = "jobs.csv";

    private final Problems problems = new Problems();
    private final Map<String, JobRecord> jobs = new LinkedHashMap<>();
    private final Map<String, List<CallRecord>> calls = new HashMap<>();
    private final Map<String, Set<String>> leaking = new HashMap<>();

    private CallReader() {}

    /** The jobs in the order of their table, or every problem in both. */
    public static Loaded<List<FollowedJob>> read(Path folder, Assumptions assumptions, JobHouses houses) {
        Problems missing = new Problems();
        Optional<Source> calls = Folder.of(folder).find(CallSchema.FILE, missing);
        return new CallReader().read(JobReader.read(folder.resolve(JOBS), assumptions, houses), calls, missing);
    }

    /** The same of jobs that were read, and the calls of a file. */
    public static Loaded<List<FollowedJob>> read(Loaded<List<JobRecord>> jobs, Path calls) {
        Problems missing = new Problems();
        Optional<Source> source = Folder.file(calls, missing);
        return new CallReader().read(jobs, source, missing);
    }

    static Loaded<List<FollowedJob>> read(Source jobs, Source calls, Assumptions assumptions, JobHouses houses) {
        return new CallReader().read(JobReader.read(jobs, assumptions, houses), Optional.of(calls), new Problems());
    }

    private Loaded<List<FollowedJob>> read(Loaded<List<JobRecord>> read, Optional<Source> source, Problems missing) {
        Schema schema = CallSchema.CALLBACKS;
        Optional<TextTable> table = source.flatMap(s -> TextTable.read(s, schema, problems));
        read.value().ifPresent(records -> {
            records.forEach(job -> jobs.put(job.id(), job));
            table.ifPresent(t -> t.soundRows().forEach(this::call));
        });
        List<FollowedJob> followed = read.value().isPresent() && table.isPresent() ? followed() : List.of();
        return new Loaded<>(
                problems.hasErrors() || table.isEmpty()
                        ? Optional.empty()
                        : read.value().map(r -> followed),
                Stream.of(read.errors(), missing.errors(), problems.errors())
                        .flatMap(List::stream)
                        .toList(),
                Stream.concat(read.warnings().stream(), problems.warnings().stream())
                        .filter(warning -> !warning.toString().contains("this job says nothing"))
                        .toList());
    }

    private void call(Row row) {
        Optional<LocalDate> day = DateCell.of(row, "called", problems);
        JobRecord job = jobs.get(row.text("job_id"));
        if (job == null) {
            row.warning(
                    problems,
                    "job_id",
                    Quoted.of(row.text("job_id")) + " is not a job of " + JOBS + "; the call is left out");
        } else if (day.isPresent() && agrees(row, job, day.get())) {
            CallRecord call = call(row, day.get());
            calls.computeIfAbsent(job.id(), id -> new ArrayList<>()).add(call);
        }
    }

    private boolean agrees(Row row, JobRecord job, LocalDate day) {
        Optional<LocalDate> from = job.finished().or(job::date);
        if (from.filter(day::isBefore).isPresent()) {
            row.error(problems, "called", Quoted.of(day.toString()) + " is before the job was finished, " + from.get());
            return false;
        }
        if (job.followedUntil().filter(day::isAfter).isPresent()) {
            row.error(
                    problems,
                    "called",
                    Quoted.of(day.toString()) + " is after the last day that the job was followed, "
                            + job.followedUntil().get());
            return false;
        }
        Set<String> windows = leaking.computeIfAbsent(job.id(), id -> new HashSet<>());
        if (row.has("opening") && windows.add(row.text("opening")) && windows.size() > job.openings()) {
            row.error(
                    problems,
                    "opening",
                    Quoted.of(row.text("opening")) + " is one window more than the job had, " + job.openings());
            return false;
        }
        return true;
    }

    private static CallRecord call(Row row, LocalDate day) {
        return new CallRecord(
                row.text("job_id"),
                Optional.of(row.text("opening")).filter(text -> !text.isEmpty()),
                day,
                row.has("cause") ? Optional.of(row.word("cause", CallRecord.Cause.class)) : Optional.empty(),
                row.has("damage") ? Optional.of(row.yes("damage")) : Optional.empty(),
                row.has("cost_usd") ? row.optionalNumber("cost_usd") : OptionalDouble.empty(),
                row.has("paid_by") ? Optional.of(row.word("paid_by", CallRecord.PaidBy.class)) : Optional.empty());
    }

    private List<FollowedJob> followed() {
        Optional<LocalDate> last = Stream.concat(
                        jobs.values().stream().flatMap(job -> Stream.of(job.date(), job.finished(), job.followedUntil())
                                .flatMap(Optional::stream)),
                        calls.values().stream().flatMap(List::stream).map(CallRecord::called))
                .max(Comparator.naturalOrder());
        List<FollowedJob> followed = new ArrayList<>();
        int without = 0;
        for (JobRecord job : jobs.values()) {
            Optional<LocalDate> from = job.finished().or(job::date);
            if (from.isEmpty()) {
                without++;
                continue;
            }
            LocalDate until = job.followedUntil().orElse(last.orElseThrow());
            if (until.isBefore(from.get())) {
                problems.error(
                        JOBS,
                        "job " + Quoted.of(job.id()) + " was followed until " + until + ", before it was finished, "
                                + from.get());
                continue;
            }
            List<CallRecord> own = calls.getOrDefault(job.id(), List.of()).stream()
                    .sorted(Comparator.comparing(CallRecord::called))
                    .toList();
            followed.add(new FollowedJob(job, from.get(), until, own));
        }
        if (without > 0) {
            problems.warning(JOBS, 1, "finished", "is empty in " + without + " jobs without a date; they are left out");
        }
        return followed;
    }
}
