package weatherlap.analysis.backtest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Fact;

/**
 * Bias in one kind of jobs.
 *
 * @param factor what the jobs are told apart by
 * @param level of it
 */
public record SegmentBias(String factor, String level, Score score) {
    private static final int LEAST_JOBS = 5;
    private static final String NOT_KEPT = "not kept";

    /** Biases of an amount in every kind of five jobs or more. */
    static List<SegmentBias> of(List<Trial> trials, Seer seer) {
        Map<String, Function<JobRecord, String>> factors = new LinkedHashMap<>();
        factors.put("method", job -> job.method().label());
        factors.put("windows", job -> windows(job.openings()));
        factors.put("stories", job -> job.facts().getOrDefault(Fact.STOREYS, NOT_KEPT));
        factors.put(
                "cladding",
                job -> job.facts().getOrDefault(Fact.CLADDING, NOT_KEPT).replace('_', ' '));
        factors.put(
                "year",
                job -> job.date().map(day -> Integer.toString(day.getYear())).orElse(NOT_KEPT));
        factors.put("crew", job -> job.crew().orElse(NOT_KEPT));
        List<SegmentBias> rows = new ArrayList<>();
        factors.forEach((factor, level) -> trials.stream()
                .collect(Collectors.groupingBy(trial -> level.apply(trial.job()), TreeMap::new, Collectors.toList()))
                .forEach((name, own) -> {
                    if (own.size() >= LEAST_JOBS) {
                        rows.add(new SegmentBias(factor, name, Score.of(own, seer)));
                    }
                }));
        return rows;
    }

    private static String windows(int openings) {
        if (openings <= 5) {
            return "1 to 5";
        }
        return openings <= 10 ? "6 to 10" : "11 or more";
    }
}
