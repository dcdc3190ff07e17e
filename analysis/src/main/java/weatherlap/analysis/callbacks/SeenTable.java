package weatherlap.analysis.callbacks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import weatherlap.analysis.words.InWords;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.sim.method.Method;

/** Seen beside expected by method, by years since the work, and by the facts of the houses. */
record SeenTable(
        List<FollowedJob> jobs,
        JobHouses houses,
        Map<FollowedJob, ExpectedCalls.Damage> exposures,
        Map<Method, Double> levels,
        double lagYears) {
    private static final List<Integer> AGES = List.of(0, 2, 5, 10, 100);

    List<SeenExpected> rows() {
        List<SeenExpected> rows = new ArrayList<>();
        by(rows, "method", job -> job.job().method().label());
        for (int a = 0; a + 1 < AGES.size(); a++) {
            rows.add(age(AGES.get(a), AGES.get(a + 1)));
        }
        by(rows, "barrier", job -> InWords.of(houses.of(job.job()).barrier()));
        by(rows, "cladding", job -> InWords.of(houses.of(job.job()).cladding()));
        by(rows, "stories", job -> Integer.toString(houses.of(job.job()).storeys()));
        return rows.stream().filter(row -> row.jobs() > 0).toList();
    }

    private void by(List<SeenExpected> rows, String factor, Function<FollowedJob, String> level) {
        Map<String, List<FollowedJob>> levels = new TreeMap<>();
        jobs.forEach(job ->
                levels.computeIfAbsent(level.apply(job), l -> new ArrayList<>()).add(job));
        levels.forEach((name, own) -> rows.add(row(factor, name, own, 0, Double.MAX_VALUE)));
    }

    private SeenExpected age(int from, int to) {
        String name = to > 50 ? "from " + from : from + " to " + to;
        List<FollowedJob> reaching =
                jobs.stream().filter(job -> job.years() >= from).toList();
        return row("years since", name, reaching, from, to);
    }

    private SeenExpected row(String factor, String level, List<FollowedJob> own, double from, double to) {
        double years = 0;
        double expected = 0;
        double fitted = 0;
        int seen = 0;
        for (FollowedJob job : own) {
            double end = Math.min(to, job.years());
            LaggedExposure exposure = exposures.get(job).all();
            double calls = exposure.reported(end, lagYears) - exposure.reported(from, lagYears);
            years += job.job().openings() * (end - from);
            expected += calls;
            fitted += calls * levels.get(job.job().method());
            seen += (int) job.leaks().stream()
                    .mapToDouble(call -> job.years(call.called()))
                    .filter(t -> t >= from && t < to)
                    .count();
        }
        return new SeenExpected(factor, level, own.size(), years, seen, expected, fitted);
    }
}
