package weatherlap.analysis.drivers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.assumptions.Wage;

/** The numbers of the assumptions that may be changed, in the order of the tables. */
public final class Factors {
    /** Not assumptions: they set how a run is done. */
    private static final Set<Scalar> OF_THE_RUN = Set.of(Scalar.SEED, Scalar.DRAWS);

    /** Ends of the range of a repair's cost, which move with it, and the spread of a unit's price, which is a range itself. */
    private static final Set<Scalar> OF_A_RANGE =
            Set.of(Scalar.REPAIR_COST_LOW_USD, Scalar.REPAIR_COST_HIGH_USD, Scalar.UNIT_PRICE_SPREAD);

    private static final double CORRELATION_STEP = 0.05;
    private static final double MOST_MINUTES = 1e5;
    private static final double MOST_USD = 1e6;
    private static final double MOST_TIMES = 100;

    private Factors() {}

    /** Every number with a range: what is not known. */
    static List<Factor> ranged(Assumptions assumptions) {
        return single(assumptions).stream().filter(Factor::ranged).toList();
    }

    /** Every number that may be changed, and every group of rates that may be changed together. */
    public static List<Factor> all(Assumptions assumptions) {
        List<Factor> factors = single(assumptions);
        factors.addAll(
                RateGroup.all(assumptions).stream().map(RateGroup::factor).toList());
        return factors;
    }

    private static List<Factor> single(Assumptions assumptions) {
        List<Factor> factors = new ArrayList<>();
        assumptions.steps().forEach(step -> factors.add(step(step)));
        assumptions.materials().forEach(item -> factors.add(material(item)));
        factors.add(unitPriceList(assumptions.scenario()));
        assumptions.unitPrices().forEach(price -> factors.add(unitPrice(price)));
        assumptions.faults().forEach(fault -> factors.add(fault(fault)));
        assumptions.wages().forEach(wage -> factors.add(wage(wage)));
        for (Scalar scalar : Scalar.values()) {
            if (!OF_THE_RUN.contains(scalar) && !OF_A_RANGE.contains(scalar) && !scalar.ofTheSeason()) {
                factors.add(scalar(assumptions.scenario(), scalar));
            }
        }
        return factors;
    }

    public static Optional<Factor> named(Assumptions assumptions, String name) {
        return all(assumptions).stream()
                .filter(factor -> factor.name().equals(name))
                .findFirst();
    }

    private static Factor step(LabourStep step) {
        return new Factor(
                "labour-steps/" + step.id(),
                "labour-steps",
                step.tradeName() + ", for each " + word(step.driver()),
                "min",
                step.minutes(),
                0,
                MOST_MINUTES,
                (all, value) -> minutes(all, step, ThreePoint.exactly(value)),
                (all, value) -> minutes(all, step, step.minutes().withLikely(value)));
    }

    private static void minutes(Draft all, LabourStep step, ThreePoint minutes) {
        all.steps(row -> row.id().equals(step.id()), row -> row.withMinutes(minutes));
    }

    private static Factor material(Material item) {
        return new Factor(
                "materials/" + item.id(),
                "materials",
                item.tradeName() + ", a package",
                "USD",
                item.price(),
                0,
                MOST_USD,
                (all, value) -> price(all, item, ThreePoint.exactly(value)),
                (all, value) -> price(all, item, item.price().withLikely(value)));
    }

    private static void price(Draft all, Material item, ThreePoint price) {
        all.materials(row -> row.id().equals(item.id()), row -> row.withPrice(price));
    }

    /** The price list as a whole; once it is known, no spread is left. */
    private static Factor unitPriceList(Scenario scenario) {
        double spread = scenario.value(Scalar.UNIT_PRICE_SPREAD);
        return new Factor(
                "units/price_list",
                "units",
                "prices of new units, times the table's",
                "",
                new ThreePoint(1 - spread, 1, 1 + spread),
                0,
                MOST_TIMES,
                (all, value) -> {
                    times(all, value);
                    all.scalar(Scalar.UNIT_PRICE_SPREAD, 0);
                },
                Factors::times);
    }

    private static void times(Draft all, double factor) {
        all.unitPrices(row -> true, row -> row.times(factor));
    }

    private static Factor unitPrice(UnitPrice price) {
        return new Factor(
                "units/" + word(price.method()) + "/" + word(price.operation()),
                "units",
                "base price of a new " + words(price.operation()) + " for the " + words(price.method()),
                "USD",
                ThreePoint.exactly(price.baseUsd()),
                0,
                MOST_USD,
                (all, value) -> all.unitPrices(
                        row -> row.method() == price.method() && row.operation() == price.operation(),
                        row -> row.withBaseUsd(value)));
    }

    private static Factor fault(LapFault fault) {
        return new Factor(
                "lap-faults/" + fault.id(),
                "lap-faults",
                "share of arriving water let past by: " + fault.tradeName(),
                "fraction",
                fault.admitted(),
                0,
                1,
                (all, value) -> admitted(all, fault, ThreePoint.exactly(value)),
                (all, value) -> admitted(all, fault, fault.admitted().withLikely(value)));
    }

    private static void admitted(Draft all, LapFault fault, ThreePoint share) {
        all.faults(row -> row.id().equals(fault.id()), row -> row.withAdmitted(share));
    }

    private static Factor wage(Wage wage) {
        return new Factor(
                "wages/" + wage.region() + "/" + wage.role(),
                "wages",
                "wage of a " + wage.role() + " in " + wage.region() + ", before burden",
                "USD/h",
                ThreePoint.exactly(wage.usdPerHour()),
                Math.ulp(1.0),
                MOST_USD,
                (all, value) -> all.wages(
                        row -> row.region().equals(wage.region()) && row.role().equals(wage.role()),
                        row -> row.withUsdPerHour(value)));
    }

    private static Factor scalar(Scenario scenario, Scalar scalar) {
        if (scalar == Scalar.REPAIR_COST_USD) {
            return repairCost(scenario);
        }
        ThreePoint range = scenario.settings().get(scalar).range().orElse(ThreePoint.exactly(scenario.value(scalar)));
        return new Factor(
                scalar.key(),
                "scenario",
                scalar.meaning(),
                scalar.unit(),
                range,
                scalar.low(),
                scalar.high(),
                (all, value) -> all.scalar(scalar, settled(scalar, value)),
                (all, value) -> all.scalar(scalar, counted(scalar, value)));
    }

    /** The likeness of a house's laps goes in steps, so that the tables that hang on it alone serve many points. */
    private static double settled(Scalar scalar, double value) {
        return scalar == Scalar.HOUSE_CORRELATION
                ? Math.max(CORRELATION_STEP, Math.round(value / CORRELATION_STEP) * CORRELATION_STEP)
                : counted(scalar, value);
    }

    /** Years, people and lites are whole. */
    private static double counted(Scalar scalar, double value) {
        return scalar.whole() ? Math.rint(value) : value;
    }

    private static Factor repairCost(Scenario scenario) {
        ThreePoint repair = scenario.repairUsd();
        return new Factor(
                Scalar.REPAIR_COST_USD.key(),
                "scenario",
                "mending one leak-damaged opening",
                Scalar.REPAIR_COST_USD.unit(),
                repair,
                repair.low(),
                repair.high(),
                (all, value) -> {
                    all.scalar(Scalar.REPAIR_COST_LOW_USD, value);
                    all.scalar(Scalar.REPAIR_COST_USD, value);
                    all.scalar(Scalar.REPAIR_COST_HIGH_USD, value);
                },
                (all, value) -> all.scalar(Scalar.REPAIR_COST_USD, value));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static String words(Enum<?> constant) {
        return word(constant).replace('_', ' ');
    }
}
