package weatherlap.datasets.jobs;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.datasets.generator.BundledMix;
import weatherlap.datasets.generator.HouseGenerator;
import weatherlap.datasets.generator.Mix;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

/**
 * What holds of jobs whose records are silent: for each fact how often each value holds, in the shop's other records, with a few jobs'
 * worth of windows of made-up houses of the national mix. Facts are drawn apart from one another, which leaves out that old houses have
 * wood windows; a cladding that the method cannot be done behind is not drawn.
 */
public final class BlankFacts {
    /** How many jobs the made-up houses count for (judgement). */
    private static final double BELIEVED_JOBS = 4;

    private static final int HOUSES = 120;

    private final Set<Fact> asked;
    private final Map<Fact, Map<String, Double>> shares = new EnumMap<>(Fact.class);

    private BlankFacts(Set<Fact> asked) {
        this.asked = asked;
    }

    static BlankFacts of(Assumptions assumptions, List<JobRecord> jobs) {
        BlankFacts facts = new BlankFacts(asked(assumptions));
        List<Fact> blank = facts.asked.stream()
                .filter(fact -> jobs.stream().anyMatch(job -> !job.facts().containsKey(fact)))
                .toList();
        if (!blank.isEmpty()) {
            facts.believe(blank, assumptions.scenario());
            jobs.forEach(job -> facts.see(job, blank));
        }
        return facts;
    }

    /** Facts that a step's condition, its quantity or its pace hangs on. */
    private static Set<Fact> asked(Assumptions assumptions) {
        Set<Fact> asked = EnumSet.of(Fact.CLADDING, Fact.STOREYS, Fact.LEAD_SAFE);
        assumptions.steps().forEach(step -> {
            asked.addAll(step.appliesWhen().facts());
            if (step.driver() == Driver.UNIT) {
                asked.add(Fact.UNITS);
            } else if (step.driver() == Driver.BROKEN_PANEL) {
                asked.add(Fact.SIDING_CONDITION);
            }
        });
        return asked;
    }

    private void believe(List<Fact> blank, Scenario scenario) {
        List<Facts> windows = new HouseGenerator(Mix.bundled(BundledMix.NATIONAL), 1)
                .houses(HOUSES)
                .flatMap(house -> windows(house, scenario).stream())
                .toList();
        for (Facts window : windows) {
            blank.forEach(fact -> count(fact, window.word(fact), BELIEVED_JOBS / windows.size()));
        }
    }

    private static List<Facts> windows(House house, Scenario scenario) {
        return house.elevations().stream()
                .flatMap(wall -> wall.openings().stream().map(window -> Facts.of(house, wall, window, scenario)))
                .toList();
    }

    private void see(JobRecord job, List<Fact> blank) {
        blank.stream()
                .filter(job.facts()::containsKey)
                .forEach(fact -> count(fact, job.facts().get(fact), 1));
    }

    private void count(Fact fact, String value, double times) {
        shares.computeIfAbsent(fact, f -> new HashMap<>()).merge(value, times, Double::sum);
    }

    /** Facts of a job that count and were not kept. */
    public Set<Fact> of(JobRecord job) {
        return asked.stream()
                .filter(fact -> !job.facts().containsKey(fact))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Fact.class)));
    }

    /**
     * The value at a place along the shares.
     *
     * @param uniform place along the values in the order of {@link Fact#allowed()}
     */
    String drawn(Fact fact, Method method, double uniform) {
        Map<String, Double> all = shares.get(fact);
        List<String> possible = fact.allowed().stream()
                .filter(all::containsKey)
                .filter(value ->
                        fact != Fact.CLADDING || method.isOpenTo(Cladding.valueOf(value.toUpperCase(Locale.ROOT))))
                .toList();
        double place = uniform * possible.stream().mapToDouble(all::get).sum();
        for (String value : possible) {
            place -= all.get(value);
            if (place < 0) {
                return value;
            }
        }
        return possible.isEmpty() ? JobWork.ordinary().get(fact) : possible.get(possible.size() - 1);
    }
}
