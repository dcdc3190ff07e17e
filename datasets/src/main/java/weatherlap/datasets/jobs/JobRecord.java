package weatherlap.datasets.jobs;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.method.Method;

/**
 * One finished job.
 *
 * @param id unique in a file
 * @param crew its name; empty: not kept
 * @param openings windows replaced, 1 or more
 * @param counted quantities as the shop kept them
 * @param temperatureF outside; empty: the scenario's
 * @param facts that the shop kept of the house or of all its openings
 * @param took the time it took
 * @param followUp how long calls were waited for
 * @param money what was estimated, paid and asked
 */
public record JobRecord(
        String id,
        Optional<LocalDate> date,
        Optional<String> houseId,
        Method method,
        Optional<String> crew,
        int openings,
        Counted counted,
        OptionalDouble temperatureF,
        Map<Fact, String> facts,
        Took took,
        FollowUp followUp,
        JobMoney money) {
    public JobRecord {
        Check.text("job id", id);
        Check.within("openings", openings, 1, 10_000);
        facts = Map.copyOf(facts);
    }

    /** A job of which nobody kept how long it was followed, nor any money. */
    public JobRecord(
            String id,
            Optional<LocalDate> date,
            Optional<String> houseId,
            Method method,
            Optional<String> crew,
            int openings,
            Counted counted,
            OptionalDouble temperatureF,
            OptionalDouble personHours,
            Map<Fact, String> facts,
            Map<String, Double> stepMinutes) {
        this(
                id,
                date,
                houseId,
                method,
                crew,
                openings,
                counted,
                temperatureF,
                facts,
                new Took(personHours, stepMinutes),
                FollowUp.UNKNOWN,
                JobMoney.NOTHING);
    }

    /** The same with other facts, time, follow-up and money. */
    private JobRecord with(
            Counted counts,
            OptionalDouble temperature,
            Map<Fact, String> kept,
            Took time,
            FollowUp followed,
            JobMoney paid) {
        return new JobRecord(
                id, date, houseId, method, crew, openings, counts, temperature, kept, time, followed, paid);
    }

    public JobRecord with(FollowUp followed) {
        return with(counted, temperatureF, facts, took, followed, money);
    }

    public JobRecord with(JobMoney paid) {
        return with(counted, temperatureF, facts, took, followUp, paid);
    }

    /** The same where other things were written down of it. */
    public JobRecord keeping(
            OptionalDouble temperature, OptionalDouble hours, Map<Fact, String> kept, Map<String, Double> minutes) {
        return with(counted, temperature, kept, new Took(hours, minutes), followUp, money);
    }

    /** The same with some of its timings left out, by step id. */
    public JobRecord without(Set<String> timings) {
        Map<String, Double> kept = new LinkedHashMap<>(stepMinutes());
        kept.keySet().removeAll(timings);
        return keeping(temperatureF, personHours(), facts, kept);
    }

    /** What was known before the work began: no time, no days, no money and no calls. */
    public JobRecord beforehand() {
        Map<Driver, Double> measured = new EnumMap<>(Driver.class);
        measured.putAll(counted.quantities());
        measured.remove(Driver.DAY);
        return with(new Counted(measured), temperatureF, facts, Took.UNKNOWN, FollowUp.UNKNOWN, JobMoney.NOTHING);
    }

    /** Person-hours on site, travel not counted; empty: not kept. */
    public OptionalDouble personHours() {
        return took.personHours();
    }

    /** Person-minutes of the steps that the shop timed, by step id. */
    public Map<String, Double> stepMinutes() {
        return took.stepMinutes();
    }

    /** Last day on site; empty: not kept. */
    public Optional<LocalDate> finished() {
        return followUp.finished();
    }

    /** Last day on which a call would have been known; empty: not kept. */
    public Optional<LocalDate> followedUntil() {
        return followUp.until();
    }

    /** What the family paid for the job, USD; empty: not kept. */
    public OptionalDouble priceUsd() {
        return money.priceUsd();
    }

    /**
     * Time on site.
     *
     * @param personHours travel not counted; empty: not kept
     * @param stepMinutes person-minutes of the steps that were timed, by step id
     */
    public record Took(OptionalDouble personHours, Map<String, Double> stepMinutes) {
        public static final Took UNKNOWN = new Took(OptionalDouble.empty(), Map.of());

        public Took {
            personHours.ifPresent(hours -> Check.positive("person-hours", hours));
            stepMinutes.forEach((step, minutes) -> Check.notNegative("minutes of " + step, minutes));
            stepMinutes =
                    stepMinutes.isEmpty() ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(stepMinutes));
        }
    }

    /**
     * How long calls were waited for.
     *
     * @param finished last day on site; empty: not kept
     * @param until last day on which a call would have been known; empty: not kept
     */
    public record FollowUp(Optional<LocalDate> finished, Optional<LocalDate> until) {
        public static final FollowUp UNKNOWN = new FollowUp(Optional.empty(), Optional.empty());
    }

    /**
     * Quantities of a job.
     *
     * @param quantities of all openings together, by what they are counted by; what the shop did not keep is not there
     */
    public record Counted(Map<Driver, Double> quantities) {
        /** Nothing kept. */
        public static final Counted NOTHING = new Counted(Map.of());

        public Counted {
            quantities.forEach((driver, quantity) -> Check.notNegative("quantity of " + driver, quantity));
            quantities = Map.copyOf(quantities);
        }

        public OptionalDouble of(Driver driver) {
            Double kept = quantities.get(driver);
            return kept == null ? OptionalDouble.empty() : OptionalDouble.of(kept);
        }
    }
}
