package weatherlap.reports.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobParts;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.OpeningResult;

/**
 * A house by one method: a line of the sheet behind the what-if.
 *
 * @param house of those shown, from 0
 * @param line among all jobs, from 0
 * @param firstWindow of the house among all windows shown, from 0
 * @param openings in table order
 */
record SheetLine(
        int house,
        int line,
        int firstWindow,
        HouseChoice choice,
        MethodResult result,
        List<OpeningResult> openings,
        JobParts parts) {
    /**
     * Each house by each method that it is open to.
     *
     * @param parts of each house
     */
    static List<SheetLine> of(List<HouseChoice> shown, List<Map<Method, JobParts>> parts) {
        List<SheetLine> jobs = new ArrayList<>();
        int windows = 0;
        for (int h = 0; h < shown.size(); h++) {
            HouseChoice choice = shown.get(h);
            for (MethodResult result : choice.result().methods().values()) {
                List<OpeningResult> openings = choice.result().openings().stream()
                        .filter(opening -> opening.method() == result.method())
                        .toList();
                jobs.add(new SheetLine(
                        h,
                        jobs.size(),
                        windows,
                        choice,
                        result,
                        openings,
                        parts.get(h).get(result.method())));
            }
            windows += choice.result().house().openingCount();
        }
        return jobs;
    }

    /** How many windows the houses of some jobs have. */
    static int windows(List<SheetLine> jobs) {
        return jobs.stream()
                .mapToInt(job -> job.firstWindow + job.windows())
                .max()
                .orElse(0);
    }

    Method method() {
        return result.method();
    }

    int windows() {
        return openings.size();
    }

    /** Whether the method is one of the two that are set side by side at the house. */
    boolean isOfPair() {
        return choice.result().contrast().holds(method());
    }

    /** The method of the two that the job stands for, where it is {@link #isOfPair}. */
    Method named() {
        return choice.result().named().named(method(), choice.result().contrast());
    }

    /** By a crew of so many, one of those that may be picked. */
    JobParts.CrewWork work(int people) {
        return parts.crews().stream()
                .filter(crew -> crew.people() == people)
                .findFirst()
                .orElseThrow();
    }

    double costPart(String name) {
        return result.costParts().getOrDefault(name, 0.0);
    }
}
