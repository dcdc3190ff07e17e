package weatherlap.datasets.madeup;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.rng.UniformRandomProvider;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.random.Streams;

/**
 * How crews of a made-up shop differ and how its office keeps records. Each is a share of jobs or cells, 0 to 1, where nothing else is
 * said.
 *
 * @param crewFactors time of a crew over that of the shop's rates, by its name; 1 where it is not named
 * @param driftPerYear by which jobs take longer each year, fraction; the rates are those of the last job
 * @param hoursStep to which hours are rounded, h; 0: as they are
 * @param typingFaults jobs in which one number of hours or minutes is typed ten times too large or too small
 * @param blanks facts and temperatures that were not kept
 * @param halfLogged jobs whose hours are those of the clock for a crew of two
 */
public record JobHabits(
        Map<String, Double> crewFactors,
        double driftPerYear,
        double hoursStep,
        double typingFaults,
        double blanks,
        double halfLogged,
        long seed) {
    /** Crews alike, no drift, careful records. */
    public static final JobHabits CAREFUL = new JobHabits(Map.of(), 0, 0, 0, 0, 0, 1);

    private static final double DAYS_PER_YEAR = 365.25;

    public JobHabits {
        crewFactors = Map.copyOf(crewFactors);
    }

    /** The records as such crews and such an office would have left them. */
    public List<JobRecord> applied(List<JobRecord> jobs) {
        Optional<LocalDate> last =
                jobs.stream().flatMap(job -> job.date().stream()).max(Comparator.naturalOrder());
        return jobs.stream().map(job -> kept(job, last)).toList();
    }

    private JobRecord kept(JobRecord job, Optional<LocalDate> last) {
        UniformRandomProvider stream = new Streams(seed).house("habits", job.id());
        double years = job.date()
                .map(day -> (day.toEpochDay() - last.orElseThrow().toEpochDay()) / DAYS_PER_YEAR)
                .orElse(0.0);
        double pace =
                job.crew().map(crew -> crewFactors.getOrDefault(crew, 1.0)).orElse(1.0)
                        * Math.pow(1 + driftPerYear, years);
        Map<String, Double> minutes = new LinkedHashMap<>(job.stepMinutes());
        minutes.replaceAll((step, taken) -> pace * taken);
        double logged = stream.nextDouble() < halfLogged ? 0.5 : 1;
        OptionalDouble hours = rounded(job.personHours(), pace * logged);
        if (stream.nextDouble() < typingFaults) {
            double times = stream.nextBoolean() ? 10 : 0.1;
            List<String> timed = List.copyOf(minutes.keySet());
            if (!timed.isEmpty() && stream.nextBoolean()) {
                minutes.computeIfPresent(timed.get(stream.nextInt(timed.size())), (step, taken) -> times * taken);
            } else {
                hours = job.personHours().isPresent() ? OptionalDouble.of(times * hours.getAsDouble()) : hours;
            }
        }
        Map<Fact, String> facts = new EnumMap<>(Fact.class);
        for (Fact fact : Fact.ofWork()) {
            boolean blank = stream.nextDouble() < blanks;
            if (!blank && job.facts().containsKey(fact)) {
                facts.put(fact, job.facts().get(fact));
            }
        }
        OptionalDouble temperature = stream.nextDouble() < blanks ? OptionalDouble.empty() : job.temperatureF();
        return job.keeping(temperature, hours, facts, minutes);
    }

    private OptionalDouble rounded(OptionalDouble hours, double times) {
        if (hours.isEmpty() || hoursStep == 0) {
            return hours.isEmpty() ? hours : OptionalDouble.of(times * hours.getAsDouble());
        }
        return OptionalDouble.of(Math.max(hoursStep, Math.rint(times * hours.getAsDouble() / hoursStep) * hoursStep));
    }
}
