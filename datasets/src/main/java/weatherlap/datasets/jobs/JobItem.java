package weatherlap.datasets.jobs;

import java.util.OptionalDouble;
import weatherlap.sim.Check;

/**
 * One item bought for a job.
 *
 * @param id key in materials.csv, or {@link #UNITS}
 * @param estimated packages before the work; empty: not kept
 * @param used packages, bought less what came back, fractions allowed; empty: not kept
 * @param paidUsd for those; empty: not kept
 */
public record JobItem(String id, OptionalDouble estimated, OptionalDouble used, OptionalDouble paidUsd) {
    /** The new units, one a package. */
    public static final String UNITS = "new_units";

    public JobItem {
        Check.text("item id", id);
        estimated.ifPresent(packages -> Check.notNegative("estimated packages", packages));
        used.ifPresent(packages -> Check.notNegative("used packages", packages));
        paidUsd.ifPresent(usd -> Check.notNegative("paid", usd));
    }
}
