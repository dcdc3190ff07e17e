package weatherlap.datasets.jobs;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.house.Operation;
import weatherlap.sim.price.JobCost;

/**
 * The material behind a job: how much of its driver each item is bought for, and its new units. What that makes in packages and money,
 * the tables say: whole packages, units by united inches, without permit and tipping.
 *
 * @param quantities of each item's driver, above 0, by item id in table order
 * @param units by operation
 * @param tippingUsd one load, USD
 * @param usdPerPersonHour wage with burden where its house stands, USD/h
 */
public record JobStock(
        JobRecord job,
        Map<String, Double> quantities,
        Map<Operation, NewUnits> units,
        double tippingUsd,
        double usdPerPersonHour) {
    public JobStock {
        quantities = quantities.isEmpty() ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(quantities));
        units = units.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(units));
    }

    /**
     * New units of one operation.
     *
     * @param unitedInches of all of them
     */
    public record NewUnits(double count, double unitedInches) {
        NewUnits plus(NewUnits other) {
            return new NewUnits(count + other.count, unitedInches + other.unitedInches);
        }

        NewUnits times(double share) {
            return new NewUnits(share * count, share * unitedInches);
        }
    }

    /** The same without its items and units, for costs alone: a tenth of the memory. */
    public JobStock forCosts() {
        return new JobStock(job, Map.of(), Map.of(), tippingUsd, usdPerPersonHour);
    }

    /** Packages of an item that the job uses, unrounded, waste in. */
    public double packages(Material item) {
        return item.packages(quantity(item));
    }

    /** Packages that are bought for it. */
    public double wholePackages(Material item) {
        return item.wholePackages(quantity(item));
    }

    private double quantity(Material item) {
        return quantities.getOrDefault(item.id(), 0.0);
    }

    /** How many new units. */
    public double unitCount() {
        return units.values().stream().mapToDouble(NewUnits::count).sum();
    }

    /** What the units are expected to cost, USD. */
    public double unitsUsd(Assumptions assumptions) {
        return units.entrySet().stream()
                .mapToDouble(e -> {
                    UnitPrice price = assumptions.unitPrice(job.method(), e.getKey());
                    return e.getValue().count() * price.baseUsd()
                            + e.getValue().unitedInches() * price.usdPerUnitedInch();
                })
                .sum();
    }

    /** What the items are expected to cost, USD. */
    public double itemsUsd(Assumptions assumptions) {
        return assumptions
                .materials(job.method())
                .mapToDouble(item -> wholePackages(item) * item.price().mean())
                .sum();
    }

    /** What both are, USD. */
    public double usd(Assumptions assumptions) {
        return unitsUsd(assumptions) + itemsUsd(assumptions);
    }

    /**
     * What the job costs the shop.
     *
     * @param personHours on site
     * @param days for which the crew is on the road
     * @param warrantyUsd repairs under the warranty
     */
    public JobCost cost(Scenario scenario, double personHours, double days, double materialUsd, double warrantyUsd) {
        int people = scenario.whole(Scalar.CREW_SIZE);
        double hours =
                personHours + people * days * Units.minutesToHours(scenario.value(Scalar.TRAVEL_MINUTES_PER_DAY));
        return new JobCost(
                hours * usdPerPersonHour,
                materialUsd + tippingUsd + scenario.value(Scalar.PERMIT_USD),
                warrantyUsd,
                hours / people);
    }

    /** Days as the record counts them, else as many as such jobs take. */
    public double days(Scenario scenario) {
        return job.counted().of(Driver.DAY).orElseGet(() -> JobQuantities.days(job.method(), job.openings(), scenario));
    }

    /** Standard deviation of {@link #usd} by the ranges of the prices, USD; the prices of all units move together. */
    public double deviationUsd(Assumptions assumptions) {
        double spread = assumptions.scenario().value(Scalar.UNIT_PRICE_SPREAD);
        double units = unitsUsd(assumptions) * Math.sqrt(new ThreePoint(1 - spread, 1, 1 + spread).variance());
        double squares = assumptions
                .materials(job.method())
                .mapToDouble(
                        item -> Math.pow(wholePackages(item), 2) * item.price().variance())
                .sum();
        return Math.sqrt(units * units + squares);
    }
}
