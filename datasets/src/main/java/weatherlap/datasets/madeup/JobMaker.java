package weatherlap.datasets.madeup;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import weatherlap.datasets.jobs.JobQuantities;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobWork;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Normal;
import weatherlap.sim.random.Streams;

/**
 * Makes job records from the known rates of a shop. Every share and range in it is invented: jobs of 3 to 15 openings, half of them by
 * each method of the usual contrast, from 25 to 90 °F, by three crews. A job takes the true minutes of its steps times a lognormal factor of its own; the
 * time sheet rounds to a hundredth of an hour.
 *
 * @param jobSpread coefficient of variation of a job's time about its true rates
 * @param timedShare share of the jobs in which every step was timed
 */
public record JobMaker(Assumptions assumptions, MadeShop shop, double jobSpread, double timedShare, long seed) {
    private static final LocalDate FIRST_DAY = LocalDate.of(2015, 1, 5);
    private static final int DAYS_BETWEEN = 3;
    private static final String[] FRAMES = {
        "sound", "sound", "sound", "sound", "sound", "sound", "worn", "worn", "rotten"
    };

    /** The first jobs of the shop; more jobs do not change the earlier ones. */
    public List<JobRecord> jobs(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(this::job).toList();
    }

    private JobRecord job(int number) {
        String id = String.format(Locale.ROOT, "job-%04d", number);
        UniformRandomProvider stream = new Streams(seed).house("job", id);
        JobRecord planned = planned(id, FIRST_DAY.plusDays((long) DAYS_BETWEEN * number), stream);
        Map<LabourStep, Double> weights = JobWork.of(assumptions, planned).weights();
        double pace = Normal.factors(jobSpread, MadeShop.uniform(stream))[0];
        boolean timed = stream.nextDouble() < timedShare;
        double minutes = 0;
        Map<String, Double> byStep = new LinkedHashMap<>();
        for (Map.Entry<LabourStep, Double> entry : weights.entrySet()) {
            double own = timed ? Normal.factors(jobSpread, MadeShop.uniform(stream))[0] : 1;
            double taken = pace
                    * own
                    * entry.getValue()
                    * shop.minutes().get(entry.getKey().id());
            minutes += taken;
            byStep.put(entry.getKey().id(), rounded(taken, 10));
        }
        return planned.keeping(
                planned.temperatureF(),
                OptionalDouble.of(rounded(Units.minutesToHours(minutes), 100)),
                planned.facts(),
                timed ? byStep : Map.of());
    }

    private JobRecord planned(String id, LocalDate date, UniformRandomProvider stream) {
        boolean first = stream.nextBoolean();
        int openings = stream.nextInt(3, 16);
        double perimeterFt = rounded(openings * stream.nextDouble(12, 20), 10);
        double panels = openings * stream.nextInt(7, 14);
        int layers = stream.nextInt(1, 3);
        Map<Fact, String> facts = new EnumMap<>(JobWork.ordinary());
        // what the house of a job does not know either, and what stories there are
        facts.keySet().removeAll(Set.of(Fact.BARRIER, Fact.YEAR_BUILT, Fact.STOREY, Fact.ROOM, Fact.NEW_OPERATION));
        facts.put(Fact.FRAME_CONDITION, pick(new Streams(seed).house("frames", id), FRAMES));
        facts.put(
                Fact.CLADDING,
                pick(stream, "vinyl_siding", "vinyl_siding", "fiber_cement", "wood_lap", "brick_veneer"));
        facts.put(Fact.STOREYS, pick(stream, "1", "2", "2"));
        facts.put(Fact.LEAD_SAFE, pick(stream, "no", "no", "no", "yes"));
        facts.put(Fact.INTERIOR_RETURN, pick(stream, "drywall", "drywall", "drywall", "wood_jamb"));
        Contrast contrast =
                Contrast.USUAL.at(Cladding.valueOf(facts.get(Fact.CLADDING).toUpperCase(Locale.ROOT)));
        Method method = first ? contrast.first() : contrast.second();
        double spacingIn = assumptions.scenario().value(Scalar.FASTENER_SPACING_IN);
        Map<Driver, Double> counted = new EnumMap<>(Driver.class);
        counted.put(Driver.ELEVATION, (double) Math.min(4, stream.nextInt(1, 1 + openings)));
        counted.put(Driver.DAY, JobQuantities.days(method, openings, assumptions.scenario()));
        counted.put(Driver.PANEL, method.takesSidingDown() ? panels : 0);
        counted.put(Driver.PERIMETER_FT, perimeterFt);
        counted.put(Driver.RETURN_FT, method.cutsReturns() ? rounded(perimeterFt * layers, 10) : 0);
        counted.put(
                Driver.FASTENER,
                method.hasFlange() ? (double) Math.round(Units.feetToInches(perimeterFt) / spacingIn) : 0);
        return new JobRecord(
                id,
                Optional.of(date),
                Optional.empty(),
                method,
                Optional.of(pick(stream, "north", "south", "west")),
                openings,
                new JobRecord.Counted(counted),
                OptionalDouble.of(stream.nextInt(25, 91)),
                OptionalDouble.empty(),
                facts,
                Map.of());
    }

    private static String pick(UniformRandomProvider stream, String... words) {
        return words[stream.nextInt(words.length)];
    }

    private static double rounded(double value, double parts) {
        return Math.round(value * parts) / parts;
    }
}
