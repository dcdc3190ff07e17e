package weatherlap.datasets.madeup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.rng.UniformRandomProvider;
import weatherlap.datasets.jobs.CallRecord;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobMoney;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Normal;
import weatherlap.sim.random.Streams;

/**
 * Makes the follow-up of jobs and their service calls from known levels of leaks. Every share and range in it is invented: one job in
 * five is sold on or lost, other calls come once in a hundred window-years, a repair costs some 2,000 USD, a window of
 * a job without a price sells at some 1,000 USD.
 *
 * @param levels leak calls over those that the tables expect, by method
 * @param lagYears mean time from damage to call
 * @param expected damage that the tables expect at the windows of a job within so many years
 */
public record CallMaker(Map<Method, Double> levels, double lagYears, Expected expected, long seed) {
    private static final LocalDate END = LocalDate.of(2024, 12, 31);
    private static final double DAYS_PER_YEAR = 365.25;
    private static final double LOST = 0.2;
    private static final double OTHER_CALLS = 0.01;
    private static final double REPAIR_USD = 2000;
    private static final double WARRANTY_YEARS = 10;
    private static final double WINDOW_USD = 1000;

    /** Damage expected at the windows of a job, never falling with the years. */
    @FunctionalInterface
    public interface Expected {
        double within(JobRecord job, double years);
    }

    public CallMaker {
        levels = Map.copyOf(levels);
    }

    /** Levels of a shop that differs from the tables: a factor of all methods and one of each, lognormal. */
    public static Map<Method, Double> drawnLevels(long seed) {
        Streams streams = new Streams(seed);
        double shared = Normal.factors(0.5, MadeShop.uniform(streams.world("leak level")))[0];
        Map<Method, Double> levels = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            double own = Normal.factors(0.3, MadeShop.uniform(streams.world("leak level " + method)))[0];
            levels.put(method, shared * own);
        }
        return levels;
    }

    /** A job as it was followed, with its calls; a job without a day as it is, without any. */
    public Optional<FollowedJob> followed(JobRecord job) {
        return job.date().map(date -> followed(job, date));
    }

    private FollowedJob followed(JobRecord job, LocalDate from) {
        UniformRandomProvider stream = new Streams(seed).house("calls", job.id());
        LocalDate end = from.isBefore(END) ? END : from.plusYears(1);
        double years = (end.toEpochDay() - from.toEpochDay()) / DAYS_PER_YEAR;
        LocalDate until = stream.nextDouble() < LOST ? day(from, years * stream.nextDouble()) : end;
        double price = Normal.factors(0.2, MadeShop.uniform(new Streams(seed).house("price", job.id())))[0];
        JobRecord followed = job.with(new JobRecord.FollowUp(Optional.of(from), Optional.of(until)));
        JobRecord kept = job.priceUsd().isPresent()
                ? followed
                : followed.with(JobMoney.ofPrice(Math.rint(WINDOW_USD * job.openings() * price)));
        FollowedJob whole = new FollowedJob(kept, from, until, List.of());
        List<CallRecord> calls = new ArrayList<>();
        leaks(whole, stream, calls);
        others(whole, stream, calls);
        calls.sort(Comparator.comparing(CallRecord::called));
        return new FollowedJob(kept, from, until, calls);
    }

    private void leaks(FollowedJob job, UniformRandomProvider stream, List<CallRecord> calls) {
        double level = levels.get(job.job().method());
        double total = expected.within(job.job(), job.years());
        for (double sum = exponential(stream) / level; sum < total; sum += exponential(stream) / level) {
            double told = when(job, sum) + lagYears * exponential(stream);
            if (told < job.years()) {
                boolean noted = stream.nextDouble() < 0.7;
                calls.add(new CallRecord(
                        job.job().id(),
                        window(job, stream),
                        day(job.from(), told),
                        Optional.of(CallRecord.Cause.LEAK),
                        noted ? Optional.of(true) : Optional.empty(),
                        OptionalDouble.of(Math.rint(REPAIR_USD * Normal.factors(0.6, MadeShop.uniform(stream))[0])),
                        Optional.of(told < WARRANTY_YEARS ? CallRecord.PaidBy.SHOP : CallRecord.PaidBy.FAMILY)));
            }
        }
    }

    /** The time by which so much is expected, by halving. */
    private double when(FollowedJob job, double amount) {
        double low = 0;
        double high = job.years();
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            if (expected.within(job.job(), middle) < amount) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static void others(FollowedJob job, UniformRandomProvider stream, List<CallRecord> calls) {
        CallRecord.Cause[] causes = {CallRecord.Cause.AIR, CallRecord.Cause.HARDWARE, CallRecord.Cause.GLASS};
        double rate = OTHER_CALLS * job.job().openings();
        for (double t = exponential(stream) / rate; t < job.years(); t += exponential(stream) / rate) {
            calls.add(new CallRecord(
                    job.job().id(),
                    window(job, stream),
                    day(job.from(), t),
                    Optional.of(causes[stream.nextInt(causes.length)]),
                    Optional.of(false),
                    OptionalDouble.of(stream.nextInt(40, 300)),
                    Optional.of(CallRecord.PaidBy.SHOP)));
        }
    }

    private static Optional<String> window(FollowedJob job, UniformRandomProvider stream) {
        return Optional.of("W" + (1 + stream.nextInt(job.job().openings())));
    }

    private static LocalDate day(LocalDate from, double years) {
        return from.plusDays((long) (years * DAYS_PER_YEAR));
    }

    private static double exponential(UniformRandomProvider stream) {
        return -Math.log1p(-stream.nextDouble());
    }
}
