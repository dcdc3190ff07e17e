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
 * @param soldAs what one package is called, such as roll
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
        String soldAs,
        double packageSize,
        ThreePoint price,
        Condition appliesWhen,
        Origin origin) {
    /** A sum of rounded numbers this near above a whole package does not open another. */
    private static final double SLACK_PACKAGES = 1e-9;

    public Material {
        Check.text("item id", id);
        Check.text("sold as", soldAs);
        Check.notNegative("quantity per driver", quantityPerDriver);
        Check.within("waste fraction", wasteFraction, 0, 5);
        Check.positive("package size", packageSize);
        Check.notNegative("low price", price.low());
    }

    /** Sold by the package, whatever that is called. */
    public Material(
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
        this(
                id,
                method,
                tradeName,
                driver,
                quantityPerDriver,
                unit,
                wasteFraction,
                "package",
                packageSize,
                price,
                appliesWhen,
                origin);
    }

    /** Packages, unrounded, that a quantity of the driver uses, waste in. */
    public double packages(double quantity) {
        return quantity * quantityPerDriver * (1 + wasteFraction) / packageSize;
    }

    /** Whole packages bought for a quantity of the driver. */
    public double wholePackages(double quantity) {
        return Math.ceil(packages(quantity) - SLACK_PACKAGES);
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
                soldAs,
                packageSize,
                changed,
                appliesWhen,
                origin);
    }
}
