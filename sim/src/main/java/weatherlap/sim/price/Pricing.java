package weatherlap.sim.price;

import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/**
 * How a price is made from a cost; the equations stand in the package's page.
 *
 * @param profitFraction gross margin or net profit, by the way, as a fraction of the price
 * @param serviceReserve fraction of the price kept for service
 * @param overheadUsdPerCrewHour USD/h
 */
public record Pricing(Way way, double profitFraction, double serviceReserve, double overheadUsdPerCrewHour) {
    /** The two ways; they can rank the methods differently, because only one charges for the hours a crew is out. */
    public enum Way {
        GROSS_MARGIN,
        OVERHEAD_AND_NET;

        /** What the price is made to leave. */
        public Scalar profit() {
            return switch (this) {
                case GROSS_MARGIN -> Scalar.GROSS_MARGIN;
                case OVERHEAD_AND_NET -> Scalar.NET_PROFIT;
            };
        }
    }

    public Pricing {
        Check.fraction("profit", profitFraction);
        Check.fraction("service reserve", serviceReserve);
        Check.within("profit and service reserve together", profitFraction + serviceReserve, 0, Math.nextDown(1.0));
        Check.notNegative("overhead", overheadUsdPerCrewHour);
    }

    public static Pricing of(Scenario scenario) {
        Way way = scenario.choice(Choice.PRICING, Way.class);
        double profit = scenario.value(way.profit());
        return new Pricing(
                way, profit, scenario.value(Scalar.SERVICE_RESERVE), scenario.value(Scalar.OVERHEAD_USD_PER_CREW_HOUR));
    }

    /** What the shop asks, USD. */
    public double priceUsd(JobCost expected) {
        return chargedUsd(
                switch (way) {
                    case GROSS_MARGIN -> expected.directUsd();
                    case OVERHEAD_AND_NET -> expected.directUsd() + overheadUsd(expected.crewHours());
                });
    }

    /** What a cost adds to the price, USD. */
    public double chargedUsd(double costUsd) {
        return costUsd / (1 - profitFraction - serviceReserve);
    }

    /** Price less direct cost and service, USD; overhead is paid out of it. Below 0: the job does not even pay its own bills. */
    public double grossProfitUsd(double priceUsd, JobCost cost) {
        return grossProfitUsd(priceUsd, cost.directUsd());
    }

    private double grossProfitUsd(double priceUsd, double directUsd) {
        return priceUsd * (1 - serviceReserve) - directUsd;
    }

    /** Gross profit less overhead, USD. Below 0: the shop loses money on the job. */
    public double netProfitUsd(double priceUsd, JobCost cost) {
        return netProfitUsd(priceUsd, cost.directUsd(), cost.crewHours());
    }

    private double netProfitUsd(double priceUsd, double directUsd, double crewHours) {
        return grossProfitUsd(priceUsd, directUsd) - overheadUsd(crewHours);
    }

    /** Everything the job costs the shop at a price, USD: direct, service and overhead. */
    public double fullCostUsd(double priceUsd, JobCost cost) {
        return fullCostUsd(priceUsd, cost.directUsd(), cost.crewHours());
    }

    /** The same from {@link JobCost#directUsd()}, USD, and {@link JobCost#crewHours}. */
    public double fullCostUsd(double priceUsd, double directUsd, double crewHours) {
        return priceUsd - netProfitUsd(priceUsd, directUsd, crewHours);
    }

    private double overheadUsd(double crewHours) {
        return overheadUsdPerCrewHour * crewHours;
    }
}
