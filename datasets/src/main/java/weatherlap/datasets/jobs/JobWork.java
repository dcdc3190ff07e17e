package weatherlap.datasets.jobs;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.labour.Pace;

/**
 * The steps that stood behind a job: what each step's minutes for one unit of its driver are multiplied by, quantity and factors of
 * the pace in, on the day's temperature. Openings stand evenly on the storeys. A job in which travel was counted reads too slow.
 *
 * @param weights by step, in table order; steps that did not occur are left out
 * @param spread coefficient of variation of the minutes by the tables, for facts that the record leaves out
 */
public record JobWork(JobRecord job, Map<LabourStep, Double> weights, double spread) {
    /** A fact that a shop did not keep is taken to be this (judgement: the plainest common job). */
    private static final Map<Fact, String> ORDINARY = Map.ofEntries(
            Map.entry(Fact.CLADDING, "vinyl_siding"),
            Map.entry(Fact.BARRIER, "housewrap"),
            Map.entry(Fact.STOREYS, "1"),
            Map.entry(Fact.YEAR_BUILT, "1985"),
            Map.entry(Fact.LEAD_SAFE, "no"),
            Map.entry(Fact.SIDING_CONDITION, "sound"),
            Map.entry(Fact.STOREY, "1"),
            Map.entry(Fact.ROOM, "living"),
            Map.entry(Fact.OPERATION, "double_hung"),
            Map.entry(Fact.NEW_OPERATION, "double_hung"),
            Map.entry(Fact.UNITS, "1"),
            Map.entry(Fact.EXISTING_MATERIAL, "vinyl"),
            Map.entry(Fact.SASH_WEIGHTS, "no"),
            Map.entry(Fact.OLD_FLANGE, "yes"),
            Map.entry(Fact.FRAME_CONDITION, "sound"),
            Map.entry(Fact.INTERIOR_RETURN, "drywall"));

    public JobWork {
        weights = Collections.unmodifiableMap(new LinkedHashMap<>(weights));
    }

    /** What holds of a job: what its record keeps, else what is ordinary. */
    static Map<Fact, String> facts(JobRecord job) {
        Map<Fact, String> facts = new EnumMap<>(ORDINARY);
        facts.putAll(job.facts());
        return facts;
    }

    /** What holds of an ordinary job. */
    public static Map<Fact, String> ordinary() {
        return ORDINARY;
    }

    /** The work behind a job where facts that were not kept are those of an ordinary one. */
    public static JobWork of(Assumptions assumptions, JobRecord job) {
        return of(assumptions, job, facts(job));
    }

    static JobWork of(Assumptions assumptions, JobRecord job, Map<Fact, String> facts) {
        Scenario base = assumptions.scenario();
        Map<Fact, String> words = new EnumMap<>(facts);
        words.put(Fact.REGION, base.choice(Choice.REGION));
        Facts asked = Facts.of(words);
        Scenario day = base.with(Scalar.TEMPERATURE_F, job.temperatureF().orElse(base.value(Scalar.TEMPERATURE_F)));
        Map<Driver, Double> quantities = JobQuantities.of(job, facts, day);
        Pace pace = new Pace(day, job.openings(), facts.get(Fact.LEAD_SAFE).equals("yes"));
        int storeys = Integer.parseInt(facts.get(Fact.STOREYS));
        Map<LabourStep, Double> weights = new LinkedHashMap<>();
        assumptions
                .steps(job.method())
                .filter(step -> step.appliesWhen().holds(asked))
                .filter(step -> quantities.get(step.driver()) > 0)
                .forEach(step -> weights.put(step, quantities.get(step.driver()) * factor(pace, step, storeys)));
        return new JobWork(job, weights, 0);
    }

    private static double factor(Pace pace, LabourStep step, int storeys) {
        return switch (step.driver().level()) {
            case HOUSE -> product(pace.anywhere(step));
            case ELEVATION ->
                product(pace.atElevation(
                        step, IntStream.rangeClosed(1, storeys).boxed().toList()));
            case OPENING ->
                IntStream.rangeClosed(1, storeys)
                        .mapToDouble(storey -> product(pace.atOpening(step, storey)))
                        .average()
                        .orElseThrow();
        };
    }

    private static double product(List<Amount> factors) {
        return factors.stream().mapToDouble(Amount::value).reduce(1, (a, b) -> a * b);
    }

    /** Person-minutes expected by the means of the steps. */
    public double expectedMinutes() {
        return weights.entrySet().stream()
                .mapToDouble(e -> e.getValue() * e.getKey().minutes().mean())
                .sum();
    }
}
