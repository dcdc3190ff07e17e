package weatherlap.datasets.madeup;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.rng.UniformRandomProvider;
import weatherlap.datasets.jobs.JobItem;
import weatherlap.datasets.jobs.JobMoney;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobStock;
import weatherlap.datasets.jobs.JobStocks;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.price.JobCost;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.random.Normal;
import weatherlap.sim.random.Streams;

/**
 * Makes what was estimated, paid and asked for jobs. Every share and spread in it is invented: nine jobs in ten have money, half of those
 * item by item; the shop estimates a tenth of waste for everything, to half a package; a price is quoted on what the job will cost, 8 %
 * off, and one in five is invoiced otherwise than quoted.
 */
public record MoneyMaker(Assumptions assumptions, ShopMoney shop, JobStocks stocks, long seed) {
    private static final double KEPT = 0.9;
    private static final double BY_ITEM = 0.5;
    private static final double ESTIMATED_WASTE = 0.1;
    private static final double AMOUNT_SPREAD = 0.12;
    private static final double PRICE_SPREAD = 0.04;
    private static final double UNIT_SPREAD = 0.06;
    private static final double QUOTE_SPREAD = 0.08;
    private static final double CHANGED = 0.2;
    private static final double CHANGE_SPREAD = 0.06;

    /** The job with its money; one without hours as it is. */
    public JobRecord paid(JobRecord job) {
        UniformRandomProvider stream = new Streams(seed).house("money", job.id());
        if (stream.nextDouble() >= KEPT || job.personHours().isEmpty()) {
            return job;
        }
        JobStock stock = stocks.of(job);
        boolean byItem = stream.nextDouble() < BY_ITEM;
        List<JobItem> items = new ArrayList<>();
        double estimated = stock.unitsUsd(assumptions);
        for (Material item : assumptions.materials()) {
            double foreseen = stock.packages(item);
            if (foreseen > 0) {
                JobItem bought = bought(item, foreseen / (1 + item.wasteFraction()), stream);
                items.add(bought);
                estimated += bought.estimated().orElseThrow() * item.price().mean();
            }
        }
        items.add(units(stock, stream));
        double material =
                items.stream().mapToDouble(item -> item.paidUsd().orElseThrow()).sum();
        double quoted = quotedUsd(stock, material) * factor(QUOTE_SPREAD, stream);
        double price = stream.nextDouble() < CHANGED ? quoted * factor(CHANGE_SPREAD, stream) : quoted;
        return job.with(new JobMoney(
                OptionalDouble.of(Math.rint(quoted)),
                OptionalDouble.of(Math.rint(price)),
                OptionalDouble.of(Math.rint(estimated)),
                OptionalDouble.of(Math.rint(material)),
                byItem ? items : List.of()));
    }

    private JobItem bought(Material item, double net, UniformRandomProvider stream) {
        double used = net * (1 + shop.waste().get(item.id())) * factor(AMOUNT_SPREAD, stream);
        double kept = Math.max(0.1, Math.rint(10 * used) / 10);
        double usd = kept * item.price().mean() * shop.prices().get(item.id()) * factor(PRICE_SPREAD, stream);
        double estimated = Math.ceil(2 * net * (1 + ESTIMATED_WASTE)) / 2;
        return new JobItem(item.id(), OptionalDouble.of(estimated), OptionalDouble.of(kept), cents(usd));
    }

    private JobItem units(JobStock stock, UniformRandomProvider stream) {
        double usd = stock.unitsUsd(assumptions) * shop.units().get(stock.job().method()) * factor(UNIT_SPREAD, stream);
        OptionalDouble count = OptionalDouble.of(stock.unitCount());
        return new JobItem(JobItem.UNITS, count, count, cents(usd));
    }

    private double quotedUsd(JobStock stock, double materialUsd) {
        Scenario scenario = assumptions.scenario();
        JobCost cost =
                stock.cost(scenario, stock.job().personHours().orElseThrow(), stock.days(scenario), materialUsd, 0);
        return new Pricing(Pricing.Way.GROSS_MARGIN, shop.margin(), scenario.value(Scalar.SERVICE_RESERVE), 0)
                .priceUsd(cost);
    }

    private static OptionalDouble cents(double usd) {
        return OptionalDouble.of(Math.rint(100 * usd) / 100);
    }

    private static double factor(double spread, UniformRandomProvider stream) {
        return Normal.factors(spread, MadeShop.uniform(stream))[0];
    }
}
