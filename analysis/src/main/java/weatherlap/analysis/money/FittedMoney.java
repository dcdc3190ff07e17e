package weatherlap.analysis.money;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import weatherlap.analysis.words.OwnRecords;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.assumptions.UnitPrice;

/** Tables with waste, prices and margin as the records have them; rows that no record tells of stay as they are. */
public final class FittedMoney {
    /** More waste than this is no waste, and no table takes it. */
    private static final double MOST_WASTE = 5;

    private FittedMoney() {}

    /** The tables, whose texts say what each row now rests on. */
    public static AssumptionTables of(AssumptionTables tables, MoneyFit fit) {
        Assumptions fitted = of(tables.assumptions(), fit);
        AssumptionTables changed = tables.withMaterials(fitted.materials()).withUnitPrices(fitted.unitPrices());
        return fit.margin().isPresent() ? changed.with(fitted.scenario()) : changed;
    }

    public static Assumptions of(Assumptions assumptions, MoneyFit fit) {
        return assumptions
                .withMaterials(assumptions.materials().stream()
                        .map(item -> item(item, fit))
                        .toList())
                .withUnitPrices(assumptions.unitPrices().stream()
                        .map(price -> unit(price, fit))
                        .toList())
                .with(fit.margin()
                        .map(margin -> scenario(assumptions.scenario(), margin))
                        .orElse(assumptions.scenario()));
    }

    private static Material item(Material item, MoneyFit money) {
        Optional<ItemFit> seen = money.items().stream()
                .filter(fit -> fit.item().id().equals(item.id()))
                .filter(fit -> fit.used().isSeen() || fit.paid().isSeen())
                .findFirst();
        return seen.map(fit -> new Material(
                        item.id(),
                        item.method(),
                        item.tradeName(),
                        item.driver(),
                        item.quantityPerDriver(),
                        item.unit(),
                        fit.used().isSeen() ? Math.min(MOST_WASTE, fit.wasteFraction()) : item.wasteFraction(),
                        item.soldAs(),
                        item.packageSize(),
                        fit.paid().isSeen() ? fit.price() : item.price(),
                        item.appliesWhen(),
                        OwnRecords.origin(Math.max(fit.used().rows(), fit.paid().rows()), item.origin())))
                .orElse(item);
    }

    private static UnitPrice unit(UnitPrice price, MoneyFit money) {
        return Optional.ofNullable(money.units().get(price.method()))
                .filter(Level::isSeen)
                .map(level -> new UnitPrice(
                        price.method(),
                        price.operation(),
                        price.baseUsd() * level.factor(),
                        price.usdPerUnitedInch() * level.factor(),
                        price.ratingPsf(),
                        OwnRecords.origin(level.rows(), price.origin())))
                .orElse(price);
    }

    private static Scenario scenario(Scenario scenario, MoneyFit.Margin margin) {
        Scalar scalar = margin.scalar();
        Setting before = scenario.settings().get(scalar);
        double value = within(scalar, margin.after());
        ThreePoint range = new ThreePoint(within(scalar, margin.low()), value, within(scalar, margin.high()));
        Map<Scalar, Setting> settings = new EnumMap<>(scenario.settings());
        settings.put(
                scalar,
                new Setting(scalar, value, Optional.of(range), OwnRecords.origin(margin.jobs(), before.origin())));
        return new Scenario(settings, scenario.choices());
    }

    private static double within(Scalar scalar, double value) {
        return Math.max(scalar.low(), Math.min(scalar.high(), value));
    }

    /** Whether material or prices of some tables rest on job records already. */
    public static boolean isFitted(Assumptions assumptions) {
        return assumptions.materials().stream()
                        .anyMatch(item -> OwnRecords.isFitted(item.origin().source()))
                || assumptions.unitPrices().stream()
                        .anyMatch(price -> OwnRecords.isFitted(price.origin().source()));
    }
}
