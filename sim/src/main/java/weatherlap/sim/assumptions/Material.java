package weatherlap.sim.assumptions;

import weatherlap.sim.Check;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.method.MethodScope;

/**
 * Something bought by the package.
 *
 * @param quantityPerDriver units of stock for one unit of the driver, before waste
 * @param unit of stock, such as ft or each
 * @param wasteFraction bought above what is used, as a fraction of it
 * @param packageSize units of stock in one package; whole packages are bought for a house
 * @param price USD for one package
 */
public record Material(
        String id,
        MethodScope method,
        String tradeName,
        Driver driver,
        double quantityPerDriver,
        String unit,
        double wasteFraction,
        double packageSize,
        ThreePoint price,
        Condition appliesWhen,
        Origin origin) {
    public Material {
        Check.text("item id", id);
        Check.notNegative("quantity per driver", quantityPerDriver);
        Check.within("waste fraction", wasteFraction, 0, 5);
        Check.positive("package size", packageSize);
        Check.notNegative("low price", price.low());
    }

    /** The same at another price. */
    public Material withPrice(ThreePoint changed) {
        return new Material(
                id,
                method,
                tradeName,
                driver,
                quantityPerDriver,
                unit,
                wasteFraction,
                packageSize,
                changed,
                appliesWhen,
                origin);
    }
}
