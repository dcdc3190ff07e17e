package weatherlap.analysis.money;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.datasets.jobs.JobItem;

/** The tables of material and money that {@code calibrate} writes. */
public final class MoneyTables {
    public static final Layout<ItemFit> ITEMS = Layout.<ItemFit>of(
                    "material-fit.csv", "Material fit", "One item that a job record keeps.")
            .text("item_id", "item", "key in materials.csv", fit -> fit.item().id())
            .whole("jobs_used", "jobs, used", "jobs with packages used", fit -> fit.used()
                    .rows())
            .number("prior_waste", "waste before", "fraction", 3, "as assumed", fit -> fit.item()
                    .wasteFraction())
            .optionalNumber(
                    "fitted_waste",
                    "waste, fitted",
                    "fraction",
                    3,
                    "with the jobs weighed in",
                    used(ItemFit::wasteFraction))
            .optionalNumber(
                    "waste_low_90",
                    "waste, low 90%",
                    "fraction",
                    3,
                    "lower end of its 90% interval",
                    used(ItemFit::lowWaste))
            .optionalNumber(
                    "waste_high_90",
                    "waste, high 90%",
                    "fraction",
                    3,
                    "upper end of its 90% interval",
                    used(ItemFit::highWaste))
            .whole("jobs_paid", "jobs, paid", "jobs with packages used and paid", fit -> fit.paid()
                    .rows())
            .number("prior_price_usd", "price before", "USD", 2, "mean of a package, as assumed", fit -> fit.item()
                    .price()
                    .mean())
            .optionalNumber(
                    "fitted_price_usd", "price, fitted", "USD", 2, "with the jobs weighed in", paid(Level::factor))
            .optionalNumber(
                    "price_low_90", "price, low 90%", "USD", 2, "lower end of its 90% interval", paid(Level::low))
            .optionalNumber(
                    "price_high_90", "price, high 90%", "USD", 2, "upper end of its 90% interval", paid(Level::high))
            .whole("jobs_estimated", "jobs, estimated", "jobs with packages estimated and used", fit -> fit.estimated()
                    .rows())
            .optionalNumber(
                    "estimate_bias_fraction",
                    "over the estimate",
                    "fraction",
                    3,
                    "packages used over those that the shop estimated, less 1",
                    estimated(Level::bias))
            .optionalNumber(
                    "estimate_spread",
                    "spread",
                    "fraction",
                    3,
                    "standard deviation of the log of used over estimated",
                    estimated(Level::spread))
            .build();

    /**
     * A measure of whole jobs.
     *
     * @param id word of the measure
     */
    public record Row(
            String id, int jobs, double before, double fitted, double low, double high, double bias, double spread) {}

    public static final Layout<Row> JOBS = Layout.<Row>of("money-fit.csv", "Money fit", "One measure of whole jobs.")
            .text(
                    "measure",
                    "measure",
                    "material_over_estimate, material_over_tables, invoice_over_quote, new_units and a method (paid over the"
                            + " tables), or what the price leaves: gross_margin or net_profit",
                    Row::id)
            .whole("jobs", "jobs", "that tell of it", Row::jobs)
            .number("prior", "before", "", 4, "1 for a factor; the share of the price, as assumed", Row::before)
            .number("fitted", "fitted", "", 4, "factor or share, with the jobs weighed in", Row::fitted)
            .number("low_90", "low 90%", "", 4, "lower end of its 90% interval", Row::low)
            .number("high_90", "high 90%", "", 4, "upper end of its 90% interval", Row::high)
            .number("bias", "bias", "", 4, "as the jobs alone have it, less that before", Row::bias)
            .number("spread", "spread", "fraction", 4, "from job to job, standard deviation of the log", Row::spread)
            .build();

    private MoneyTables() {}

    private static Function<ItemFit, OptionalDouble> used(ToDoubleFunction<ItemFit> of) {
        return where(ItemFit::used, of);
    }

    private static Function<ItemFit, OptionalDouble> paid(ToDoubleFunction<Level> of) {
        return where(
                ItemFit::paid,
                fit -> of.applyAsDouble(fit.paid()) * fit.item().price().mean());
    }

    private static Function<ItemFit, OptionalDouble> estimated(ToDoubleFunction<Level> of) {
        return where(ItemFit::estimated, fit -> of.applyAsDouble(fit.estimated()));
    }

    /** A number of items whose level any job tells of. */
    private static Function<ItemFit, OptionalDouble> where(
            Function<ItemFit, Level> level, ToDoubleFunction<ItemFit> of) {
        return fit -> level.apply(fit).isSeen() ? OptionalDouble.of(of.applyAsDouble(fit)) : OptionalDouble.empty();
    }

    /** Both tables. */
    public static List<ResultTable> of(MoneyFit fit) {
        return List.of(ResultTable.of(ITEMS, fit.items()), ResultTable.of(JOBS, rows(fit)));
    }

    private static List<Row> rows(MoneyFit fit) {
        List<Row> rows = new ArrayList<>();
        fit.measures().stream()
                .filter(measure -> measure.level().isSeen())
                .forEach(measure -> rows.add(row(measure.id(), measure.level())));
        fit.units().forEach((method, level) -> rows.add(row(JobItem.UNITS + " " + method.word(), level)));
        fit.margin()
                .ifPresent(m -> rows.add(new Row(
                        m.scalar().key(),
                        m.jobs(),
                        m.before(),
                        m.after(),
                        m.low(),
                        m.high(),
                        m.seen() - m.before(),
                        m.spread())));
        return rows;
    }

    private static Row row(String id, Level level) {
        return new Row(id, level.rows(), 1, level.factor(), level.low(), level.high(), level.bias(), level.spread());
    }
}
