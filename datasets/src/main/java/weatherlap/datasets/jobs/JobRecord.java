package weatherlap.datasets.jobs;

import java.time.LocalDate;
import java.util.Collections;
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
 * @param personHours on site, travel not counted; empty: not kept
 * @param facts that the shop kept of the house or of all its openings
 * @param stepMinutes person-minutes of the steps that the shop timed, by step id
 * @param finished last day on site; empty: not kept
 * @param followedUntil last day on which a call would have been known; empty: not kept
 * @param priceUsd what the family paid for the job, USD; empty: not kept
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
        OptionalDouble personHours,
        Map<Fact, String> facts,
        Map<String, Double> stepMinutes,
        Optional<LocalDate> finished,
        Optional<LocalDate> followedUntil,
        OptionalDouble priceUsd) {
    public JobRecord {
        Check.text("job id", id);
        Check.within("openings", openings, 1, 10_000);
        personHours.ifPresent(hours -> Check.positive("person-hours", hours));
        stepMinutes.forEach((step, minutes) -> Check.notNegative("minutes of " + step, minutes));
        facts = Map.copyOf(facts);
        stepMinutes = Collections.unmodifiableMap(new LinkedHashMap<>(stepMinutes));
    }

    /** A job of which nobody kept how long it was followed. */
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
                personHours,
                facts,
                stepMinutes,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    /** The same at a price, followed from one day until another. */
    public JobRecord followed(LocalDate from, LocalDate until, double paidUsd) {
        return new JobRecord(
                id,
                date,
                houseId,
                method,
                crew,
                openings,
                counted,
                temperatureF,
                personHours,
                facts,
                stepMinutes,
                Optional.of(from),
                Optional.of(until),
                OptionalDouble.of(paidUsd));
    }

    /** The same where other things were written down of it. */
    public JobRecord keeping(
            OptionalDouble temperature, OptionalDouble hours, Map<Fact, String> kept, Map<String, Double> minutes) {
        return new JobRecord(
                id,
                date,
                houseId,
                method,
                crew,
                openings,
                counted,
                temperature,
                hours,
                kept,
                minutes,
                finished,
                followedUntil,
                priceUsd);
    }

    /** The same with some of its timings left out, by step id. */
    public JobRecord without(Set<String> timings) {
        Map<String, Double> kept = new LinkedHashMap<>(stepMinutes);
        kept.keySet().removeAll(timings);
        return keeping(temperatureF, personHours, facts, kept);
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
