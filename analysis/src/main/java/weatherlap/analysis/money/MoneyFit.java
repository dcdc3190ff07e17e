package weatherlap.analysis.money;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.method.Method;

/**
 * What material cost and what prices left, beside what was foreseen.
 *
 * @param items that any job kept, in table order
 * @param units what new units cost over the tables, by method
 * @param measures of whole jobs
 * @param margin empty where no job has price, hours and material
 * @param aside amounts too far from the others, which count nowhere
 * @param unforeseen rows of items of which the tables foresee none at such a job
 */
public record MoneyFit(
        List<ItemFit> items,
        Map<Method, Level> units,
        List<Measure> measures,
        Optional<Margin> margin,
        List<Aside> aside,
        int unforeseen) {
    public MoneyFit {
        items = List.copyOf(items);
        units = Collections.unmodifiableMap(new EnumMap<>(units));
        measures = List.copyOf(measures);
        aside = List.copyOf(aside);
    }

    /**
     * An amount of whole jobs.
     *
     * @param id word for tables
     * @param name for readers
     */
    public record Measure(String id, String name, Level level) {}

    /**
     * What is left of the price: gross margin or net profit, by the way that prices are made.
     *
     * @param scalar which of the two
     * @param before of the scenario, fraction of the price
     * @param after as the records have it, shrunk towards that
     * @param low end of its 90 % interval
     * @param high its other end
     * @param seen as the records alone have it
     * @param spread of price over cost, from job to job, log
     */
    public record Margin(
            Scalar scalar,
            int jobs,
            double before,
            double after,
            double low,
            double high,
            double seen,
            double spread) {}

    /** An amount that was set aside. */
    public record Aside(JobRecord job, String what, double actual, double foreseen) {}

    /** Whether any record says anything. */
    public boolean isSeen() {
        return !items.isEmpty()
                || !units.isEmpty()
                || margin.isPresent()
                || measures.stream().anyMatch(measure -> measure.level().isSeen());
    }
}
