package weatherlap.reports.crew;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.analysis.words.InWords;
import weatherlap.datasets.table.Headings;
import weatherlap.reports.crew.CrewSheet.JobFact;
import weatherlap.sim.house.House;

/**
 * What the office knows of a job, as the columns whose names begin with job_ have it, and its own notes, those that begin with note_. Text of a
 * table: shown as it is.
 */
final class JobFacts {
    private static final List<JobFact> ASKED = List.of(
            new JobFact("Address", "job_address"),
            new JobFact("Phone", "job_phone"),
            new JobFact("Parking", "job_parking"),
            new JobFact("Pets", "job_pets"));

    private static final List<JobFact> OF_A_WINDOW = List.of(
            new JobFact("color", "job_color"),
            new JobFact("grids", "job_grids"),
            new JobFact("hinge", "job_hinge"),
            new JobFact("tempered", "job_tempered"));

    private JobFacts() {}

    /** Every fact that a crew asks for, known or not, then the notes. */
    static List<JobFact> of(House house) {
        Stream<JobFact> asked =
                ASKED.stream().map(fact -> new JobFact(fact.what(), house.job().getOrDefault(fact.words(), "")));
        return Stream.concat(asked, notes(house.job())).toList();
    }

    private static Stream<JobFact> notes(Map<String, String> job) {
        return job.entrySet().stream()
                .filter(note -> note.getKey().startsWith(Headings.NOTE))
                .sorted(Map.Entry.comparingByKey())
                .map(note -> new JobFact(called(note.getKey()), note.getValue()));
    }

    private static String called(String note) {
        String name = note.substring(Headings.NOTE.length()).replace('_', ' ').strip();
        return name.isEmpty() ? "Note" : InWords.capital(name);
    }

    /** What is known of a window: color white, grids none. */
    static String of(Window window) {
        Map<String, String> job = window.takeoff().opening().job();
        Stream<String> known = OF_A_WINDOW.stream()
                .filter(fact -> job.containsKey(fact.words()))
                .map(fact -> fact.what() + " " + job.get(fact.words()));
        Stream<String> notes = notes(job).map(note -> note.what() + ": " + note.words());
        return Stream.concat(known, notes).collect(Collectors.joining(", "));
    }
}
