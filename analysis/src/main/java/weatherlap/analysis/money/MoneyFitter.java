package weatherlap.analysis.money;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import weatherlap.datasets.jobs.JobItem;
import weatherlap.datasets.jobs.JobMoney;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobStock;
import weatherlap.datasets.jobs.JobStocks;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.random.Normal;

/** Fits waste, prices and margin to the money that job records keep; the model stands in {@link Level} and the package's page. */
public final class MoneyFitter {
    /** How far the waste of a shop, as 1 + w, is from the tables (judgement: the tables have no range for it). */
    private static final double WASTE_PRIOR = 0.1;
    /** How far an estimate may be off in the mean (judgement). */
    private static final double ESTIMATE_PRIOR = 0.2;

    private static final double LEAST_PRIOR = 0.01;
    /** Fewer rows may be whole packages by chance. */
    private static final int ENOUGH_WHOLE = 5;

    private final Assumptions assumptions;
    private final List<Priced> jobs;
    private final ToDoubleFunction<JobRecord> repairsUsd;
    private final List<MoneyFit.Aside> aside = new ArrayList<>();
    private int unforeseen;

    private MoneyFitter(Assumptions assumptions, Stream<JobStock> stocks, ToDoubleFunction<JobRecord> repairsUsd) {
        this.assumptions = assumptions;
        jobs = stocks.map(stock -> new Priced(
                        stock.job().money().items().isEmpty() ? stock.forCosts() : stock,
                        stock.unitsUsd(assumptions),
                        stock.itemsUsd(assumptions)))
                .toList();
        this.repairsUsd = repairsUsd;
    }

    /**
     * Fits to the jobs that keep any money.
     *
     * @param repairsUsd expected of a job under the warranty, USD
     */
    public static MoneyFit fit(
            Assumptions assumptions, List<JobRecord> jobs, JobStocks stocks, ToDoubleFunction<JobRecord> repairsUsd) {
        Stream<JobStock> kept = jobs.stream().filter(MoneyFitter::keepsMoney).map(stocks::of);
        return new MoneyFitter(assumptions, kept, repairsUsd).fit();
    }

    /** The same where the material behind the jobs is known. */
    public static MoneyFit fit(Assumptions assumptions, List<JobStock> stocks, ToDoubleFunction<JobRecord> repairsUsd) {
        return new MoneyFitter(assumptions, stocks.stream(), repairsUsd).fit();
    }

    /** Whether there is anything to fit to. */
    public static boolean keepsMoney(JobRecord job) {
        JobMoney money = job.money();
        return money.materialUsd().isPresent()
                || money.priceUsd().isPresent()
                        && (money.quotedUsd().isPresent() || job.personHours().isPresent())
                || !money.items().isEmpty();
    }

    /**
     * A job and what the tables expect of its material, USD; its items are kept where its record has any to set them beside.
     *
     * @param unitsUsd of new units
     * @param itemsUsd of all else
     */
    private record Priced(JobStock stock, double unitsUsd, double itemsUsd) {
        JobRecord job() {
            return stock.job();
        }
    }

    /** A job's pair; empty where the record is silent. */
    private record Seen(JobRecord job, Level.Pair pair) {}

    private MoneyFit fit() {
        List<ItemFit> items = assumptions.materials().stream()
                .map(this::item)
                .filter(ItemFit::isSeen)
                .toList();
        return new MoneyFit(items, units(), measures(), margin(), aside, unforeseen);
    }

    private Level level(String what, List<Seen> seen, double prior) {
        Level level = Level.of(seen.stream().map(Seen::pair).toList(), prior);
        level.aside().forEach(place -> {
            Seen row = seen.get(place);
            aside.add(new MoneyFit.Aside(
                    row.job(), what, row.pair().actual(), row.pair().foreseen()));
        });
        return level;
    }

    private ItemFit item(Material item) {
        List<Bought> rows = rows(item.id());
        List<Double> amounts = rows.stream()
                .flatMap(row -> row.item().used().stream().boxed())
                .filter(used -> used > 0)
                .toList();
        boolean whole = amounts.size() >= ENOUGH_WHOLE && amounts.stream().allMatch(used -> used == Math.rint(used));
        double last = whole ? 0.5 : 0;
        List<Seen> used = new ArrayList<>();
        List<Seen> paid = new ArrayList<>();
        List<Seen> estimated = new ArrayList<>();
        rows.forEach(bought -> {
            JobStock stock = bought.stock();
            JobItem row = bought.item();
            double taken = row.used().orElse(0);
            double usd = row.paidUsd().orElse(0);
            double foreseen = stock.packages(item);
            if (taken > 0 && foreseen == 0) {
                unforeseen++;
            } else if (taken > 0) {
                used.add(new Seen(stock.job(), new Level.Pair(taken - last, foreseen)));
            }
            if (taken > 0 && usd > 0) {
                paid.add(new Seen(
                        stock.job(), new Level.Pair(usd, taken * item.price().mean())));
            }
            if (taken > 0 && row.estimated().orElse(0) > 0) {
                estimated.add(new Seen(
                        stock.job(), new Level.Pair(taken, row.estimated().getAsDouble())));
            }
        });
        return new ItemFit(
                item,
                level(item.id() + ", packages", used, WASTE_PRIOR),
                level(item.id() + ", USD", paid, prior(item.price())),
                Level.of(estimated.stream().map(Seen::pair).toList(), ESTIMATE_PRIOR),
                whole);
    }

    private record Bought(JobStock stock, JobItem item) {}

    private List<Bought> rows(String id) {
        List<Bought> rows = new ArrayList<>();
        for (Priced job : jobs) {
            job.job().money().items().stream()
                    .filter(item -> item.id().equals(id))
                    .forEach(item -> rows.add(new Bought(job.stock(), item)));
        }
        return rows;
    }

    private static double prior(ThreePoint points) {
        return points.low() > 0
                ? Math.max(LEAST_PRIOR, Math.log(points.high() / points.low()) / (2 * Normal.NINETY_PERCENT))
                : 1;
    }

    /** From the rows of units; where a method has none, from what is left of the material when its items are taken off. */
    private Map<Method, Level> units() {
        double spread = assumptions.scenario().value(Scalar.UNIT_PRICE_SPREAD);
        double prior = Math.max(LEAST_PRIOR, spread / 2);
        Map<Method, Level> units = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            List<Seen> paid = pairs(method, job -> job.job().money().items().stream()
                    .filter(item -> item.id().equals(JobItem.UNITS))
                    .flatMapToDouble(item -> item.paidUsd().stream())
                    .findFirst());
            List<Seen> seen = paid.isEmpty() ? pairs(method, this::restOfMaterial) : paid;
            if (!seen.isEmpty()) {
                units.put(method, level(JobItem.UNITS + ", USD", seen, prior));
            }
        }
        return units;
    }

    private List<Seen> pairs(Method method, Function<Priced, OptionalDouble> paidUsd) {
        List<Seen> seen = new ArrayList<>();
        jobs.stream().filter(job -> job.job().method() == method).forEach(job -> {
            double usd = paidUsd.apply(job).orElse(0);
            if (usd > 0 && job.unitsUsd() > 0) {
                seen.add(new Seen(job.job(), new Level.Pair(usd, job.unitsUsd())));
            }
        });
        return seen;
    }

    private OptionalDouble restOfMaterial(Priced job) {
        OptionalDouble all = job.job().money().materialUsd();
        return all.isEmpty() ? all : OptionalDouble.of(all.getAsDouble() - job.itemsUsd());
    }

    private List<MoneyFit.Measure> measures() {
        return List.of(
                measure(
                        "material_over_estimate",
                        "material paid, over the shop\u2019s estimate",
                        job -> job.job().money().materialUsd(),
                        job -> job.job().money().estimatedMaterialUsd()),
                measure(
                        "material_over_tables",
                        "material paid, over the tables",
                        job -> job.job().money().materialUsd(),
                        job -> OptionalDouble.of(job.unitsUsd() + job.itemsUsd())),
                measure(
                        "invoice_over_quote",
                        "invoiced, over the quote",
                        job -> job.job().money().priceUsd(),
                        job -> job.job().money().quotedUsd()));
    }

    private MoneyFit.Measure measure(
            String id,
            String name,
            Function<Priced, OptionalDouble> actual,
            Function<Priced, OptionalDouble> foreseen) {
        List<Seen> seen = new ArrayList<>();
        for (Priced job : jobs) {
            double came = actual.apply(job).orElse(0);
            double expected = foreseen.apply(job).orElse(0);
            if (came > 0 && expected > 0) {
                seen.add(new Seen(job.job(), new Level.Pair(came, expected)));
            }
        }
        return new MoneyFit.Measure(id, name, level(name, seen, ESTIMATE_PRIOR));
    }

    /** 1 − p − s is cost over price: a price F times the foreseen one leaves p = 1 − s − (1 − p₀ − s)/F. */
    private Optional<MoneyFit.Margin> margin() {
        Pricing pricing = Pricing.of(assumptions.scenario());
        List<Seen> seen = new ArrayList<>();
        for (Priced priced : jobs) {
            JobRecord job = priced.job();
            JobStock stock = priced.stock();
            OptionalDouble material = job.money().materialUsd();
            if (job.priceUsd().isPresent() && job.personHours().isPresent() && material.isPresent()) {
                double foreseen = pricing.priceUsd(stock.cost(
                        assumptions.scenario(),
                        job.personHours().getAsDouble(),
                        stock.days(assumptions.scenario()),
                        material.getAsDouble(),
                        repairsUsd.applyAsDouble(job)));
                seen.add(new Seen(job, new Level.Pair(job.priceUsd().getAsDouble(), foreseen)));
            }
        }
        if (seen.isEmpty()) {
            return Optional.empty();
        }
        Level level = level("price over cost", seen, marginPrior(pricing));
        return Optional.of(new MoneyFit.Margin(
                pricing.way().profit(),
                level.rows(),
                pricing.profitFraction(),
                profit(pricing, level.factor()),
                profit(pricing, level.low()),
                profit(pricing, level.high()),
                profit(pricing, 1 + level.bias()),
                level.spread()));
    }

    private static double profit(Pricing pricing, double factor) {
        return 1 - pricing.serviceReserve() - (1 - pricing.profitFraction() - pricing.serviceReserve()) / factor;
    }

    private double marginPrior(Pricing pricing) {
        return assumptions
                .scenario()
                .settings()
                .get(pricing.way().profit())
                .range()
                .map(range -> Math.log((1 - range.low() - pricing.serviceReserve())
                                / (1 - range.high() - pricing.serviceReserve()))
                        / (2 * Normal.NINETY_PERCENT))
                .filter(prior -> prior > LEAST_PRIOR)
                .orElse(WASTE_PRIOR);
    }
}
