package weatherlap.reports.crew;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.reports.crew.CrewSheet.JobFact;
import weatherlap.sim.house.House;

/** What the office knows of a job, as the columns whose names begin with job_ have it. Text of a table: shown as it is. */
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

    /** Every fact that a crew asks for, known or not. */
    static List<JobFact> of(House house) {
        return ASKED.stream()
                .map(fact -> new JobFact(fact.what(), house.job().getOrDefault(fact.words(), "")))
                .toList();
    }

    /** What is known of a window: color white, grids none. */
    static String of(Window window) {
        Map<String, String> job = window.takeoff().opening().job();
        Stream<String> known = OF_A_WINDOW.stream()
                .filter(fact -> job.containsKey(fact.words()))
                .map(fact -> fact.what() + " " + job.get(fact.words()));
        return known.collect(Collectors.joining(", "));
    }
}
