package weatherlap.analysis.season;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Plan;
import weatherlap.sim.method.Method;

/**
 * A house that waits, and the ways to do it.
 *
 * @param wherever by method: this method at every window that it can be built at, as one of the options
 * @param family the family's plan, as one of the options
 * @param options all that differ
 */
record WaitingHouse(HouseChoice choice, Map<Method, JobOption> wherever, JobOption family, List<JobOption> options) {
    WaitingHouse {
        wherever = Collections.unmodifiableMap(new EnumMap<>(wherever));
        options = List.copyOf(options);
    }

    static WaitingHouse of(HouseChoice choice, double meanRepairUsd) {
        Map<List<Method>, JobOption> options = new LinkedHashMap<>();
        Map<Method, JobOption> wherever = new EnumMap<>(Method.class);
        PlanJob jobs = new PlanJob(choice.result(), meanRepairUsd);
        choice.wherever()
                .forEach((method, plan) ->
                        wherever.put(method, options.computeIfAbsent(plan.byOpening(), key -> jobs.option(plan))));
        Plan family = choice.family();
        JobOption own = options.computeIfAbsent(family.byOpening(), key -> jobs.option(family));
        return new WaitingHouse(choice, wherever, own, List.copyOf(options.values()));
    }

    /** The house by a method, or by the first of its contrast where it is not open to it. */
    JobOption by(Method method) {
        return wherever.getOrDefault(
                method, wherever.get(choice.result().contrast().first()));
    }

    /**
     * So many jobs: each house in its turn stands for as many as the others, or one more; where fewer wait than there are houses, some
     * evenly spread over them.
     */
    static <T> List<T> waiting(List<T> houses, int jobs) {
        return IntStream.range(0, jobs)
                .mapToObj(j -> houses.get((int) ((long) j * houses.size() / jobs)))
                .toList();
    }
}
