package weatherlap.datasets.assumptions;

import java.util.Optional;
import weatherlap.datasets.table.Row;
import weatherlap.sim.assumptions.Condition;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.Operation;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;

/** Makes steps, materials, unit prices and wages of sound rows. */
record WorkRows(RowParts parts) {
    Optional<LabourStep> step(Row row) {
        Driver driver = row.word("driver", Driver.class);
        Optional<Origin> origin = parts.origin(row, row.text("step_id"));
        Optional<ThreePoint> minutes = parts.points(row, "low_minutes", "likely_minutes", "high_minutes");
        Optional<Condition> condition = parts.condition(row, driver);
        if (origin.isEmpty() || minutes.isEmpty() || condition.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LabourStep(
                row.text("step_id"),
                MethodScope.parse(row.text("method")),
                row.text("trade_name"),
                driver,
                minutes.get(),
                condition.get(),
                row.yes("cold_sensitive"),
                row.yes("height_sensitive"),
                row.whole("people", 1),
                origin.get()));
    }

    Optional<Material> material(Row row) {
        Driver driver = row.word("driver", Driver.class);
        Optional<Origin> origin = parts.origin(row, row.text("item_id"));
        Optional<ThreePoint> price = parts.points(row, "price_low", "price_likely", "price_high");
        Optional<Condition> condition = parts.condition(row, driver);
        if (origin.isEmpty() || price.isEmpty() || condition.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Material(
                row.text("item_id"),
                MethodScope.parse(row.text("method")),
                row.text("trade_name"),
                driver,
                row.number("quantity_per_driver"),
                row.text("unit"),
                row.number("waste_fraction"),
                row.has("sold_as") ? row.text("sold_as") : "package",
                row.number("package_size"),
                price.get(),
                condition.get(),
                origin.get()));
    }

    Optional<UnitPrice> unitPrice(Row row) {
        return parts.origin(row, row.text("method") + "/" + row.text("operation"))
                .map(origin -> new UnitPrice(
                        row.word("method", Method.class),
                        row.word("operation", Operation.class),
                        row.number("base_usd"),
                        row.number("usd_per_united_inch"),
                        row.optionalNumber("rating_psf"),
                        origin));
    }

    Optional<Wage> wage(Row row) {
        return parts.origin(row, row.text("region") + "/" + row.text("role"))
                .map(origin -> new Wage(
                        row.text("region"),
                        row.text("role"),
                        row.number("usd_per_hour"),
                        row.number("burden_fraction"),
                        origin));
    }
}
