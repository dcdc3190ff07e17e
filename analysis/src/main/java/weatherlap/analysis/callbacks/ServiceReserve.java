package weatherlap.analysis.callbacks;

import java.util.List;
import weatherlap.datasets.jobs.CallRecord;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.random.Normal;

/**
 * The share of the price that service other than leak damage takes, from what the shop paid. Calls come in proportion to the price of a job
 * and evenly over the years of the warranty W:
 *
 * <pre>  n ~ Poisson(κ E),   E = ρ Σ_i price_i min(T_i, W)/W / c,   κ ~ Gamma(b, b),   fitted share = ρ (b + n)/(b + E)</pre>
 *
 * <p>ρ is the share of the table, c the mean cost of such a call, T_i the years that job i was followed. 1/b is the variance that the
 * table's own range gives, its ends read as the 5 % and 95 % points of a lognormal. Calls that somebody else paid for, and those after the warranty,
 * do not count; one without a cost counts at the mean.
 *
 * @param jobs that have a price
 * @param calls that count
 * @param meanUsd of one, USD; 0 without any
 * @param expected E; 0 without any cost
 * @param before ρ
 * @param after the fitted share
 */
public record ServiceReserve(int jobs, int calls, double meanUsd, double expected, double before, double after) {

    /** What a shop without a range is taken to know of it (judgement). */
    private static final double DEVIATION = 0.35;

    private static final double MOST = 0.5;

    public static ServiceReserve of(List<FollowedJob> all, Scenario scenario) {
        double warranty = scenario.value(Scalar.WARRANTY_YEARS);
        Setting setting = scenario.settings().get(Scalar.SERVICE_RESERVE);
        List<FollowedJob> priced =
                all.stream().filter(job -> job.job().priceUsd().isPresent()).toList();
        List<CallRecord> calls = priced.stream()
                .flatMap(job -> job.calls().stream()
                        .filter(call -> !call.isLeakDamage() && job.years(call.called()) <= warranty))
                .filter(call ->
                        call.paidBy().map(CallRecord.PaidBy.SHOP::equals).orElse(true))
                .toList();
        double mean = calls.stream()
                .flatMapToDouble(call -> call.costUsd().stream())
                .average()
                .orElse(0);
        double before = setting.value();
        if (mean == 0 || before == 0 || warranty == 0) {
            return new ServiceReserve(priced.size(), calls.size(), mean, 0, before, before);
        }
        double sold = priced.stream()
                .mapToDouble(job -> job.job().priceUsd().orElseThrow() * Math.min(1, job.years() / warranty))
                .sum();
        double expected = before * sold / mean;
        double b = 1 / Math.expm1(Math.pow(deviation(setting), 2));
        double after = before * (b + calls.size()) / (b + expected);
        return new ServiceReserve(priced.size(), calls.size(), mean, expected, before, Math.min(MOST, after));
    }

    private static double deviation(Setting setting) {
        return setting.range()
                .filter(range -> range.low() > 0 && range.high() > range.low())
                .map(range -> Math.log(range.high() / range.low()) / (2 * Normal.NINETY_PERCENT))
                .orElse(DEVIATION);
    }

    /** Whether the records move it. */
    public boolean isFitted() {
        return expected > 0;
    }
}
