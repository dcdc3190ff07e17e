package weatherlap.datasets.jobs;

import java.util.List;
import java.util.OptionalDouble;
import weatherlap.sim.Check;

/**
 * Money of a job, USD; what was not kept is empty.
 *
 * @param quotedUsd asked before the work
 * @param priceUsd invoiced, which the family paid
 * @param estimatedMaterialUsd units and items as the shop estimated them
 * @param materialUsd units and items as they were paid, without permit and tipping
 * @param items one by one
 */
public record JobMoney(
        OptionalDouble quotedUsd,
        OptionalDouble priceUsd,
        OptionalDouble estimatedMaterialUsd,
        OptionalDouble materialUsd,
        List<JobItem> items) {
    /** Nothing kept. */
    public static final JobMoney NOTHING = new JobMoney(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of());

    public JobMoney {
        quotedUsd.ifPresent(usd -> Check.positive("quoted", usd));
        priceUsd.ifPresent(usd -> Check.positive("price", usd));
        estimatedMaterialUsd.ifPresent(usd -> Check.positive("estimated material", usd));
        materialUsd.ifPresent(usd -> Check.positive("material", usd));
        items = List.copyOf(items);
    }

    /** The same with other items. */
    public JobMoney with(List<JobItem> changed) {
        return new JobMoney(quotedUsd, priceUsd, estimatedMaterialUsd, materialUsd, changed);
    }

    /** Nothing but the price. */
    public static JobMoney ofPrice(double usd) {
        return new JobMoney(
                OptionalDouble.empty(),
                OptionalDouble.of(usd),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of());
    }
}
