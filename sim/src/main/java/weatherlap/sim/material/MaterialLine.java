package weatherlap.sim.material;

import java.util.List;
import weatherlap.sim.Check;
import weatherlap.sim.Sum;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Amount;

/**
 * One item for one house.
 *
 * @param openings quantity of the item's driver at each opening, in the order of the house's openings; all 0 for a shared item
 * @param walls quantity of the driver that each wall shares, in the order of the house's walls; all 0 for an item of the openings
 * @param house quantity of the driver counted once for the house; 0 for any other item
 */
@SuppressWarnings("ArrayRecordComponent") // gone through for every item of a house
public record MaterialLine(Material item, double[] openings, double[] walls, double house) {
    public MaterialLine {
        for (double quantity : openings) {
            Check.notNegative("quantity at an opening of ", item.id(), quantity);
        }
        for (double quantity : walls) {
            Check.notNegative("quantity at a wall of ", item.id(), quantity);
        }
        Check.notNegative("quantity at the house of ", item.id(), house);
    }

    /** The same for so many working days. */
    public MaterialLine over(int days) {
        return item.driver() == Driver.DAY && house != days ? new MaterialLine(item, openings, walls, days) : this;
    }

    /** Quantity of the driver counted for a wall or the house. */
    public double shared() {
        return Sum.of(walls) + house;
    }

    /** Units of stock that end up in the wall, before waste. */
    public double usedStock() {
        return driverQuantity() * item.quantityPerDriver();
    }

    /** Quantity of the driver at the openings, the walls and the house. */
    public double driverQuantity() {
        return Sum.of(openings) + shared();
    }

    /** Whole packages bought for the house. */
    public int packages() {
        return (int) item.wholePackages(driverQuantity());
    }

    /** Packages, unrounded, that a quantity of the driver uses, waste in. */
    public double inPackages(double quantity) {
        return item.packages(quantity);
    }

    /** What the house pays. */
    public Amount amount() {
        Amount stock = Amount.product("stock needed", item.unit(), stockOf(driverQuantity()));
        Amount packages = Amount.formula(
                "whole packages",
                packages(),
                "packages",
                List.of(stock, given("in a package", item.packageSize(), item.unit())));
        return Amount.product(item.tradeName(), "USD", List.of(packages, pricePerPackage()));
    }

    /** What the house pays, USD: the value of {@link #amount}. */
    public double usd() {
        return packages() * item.price().mean();
    }

    /** Expected price of what one opening uses of it, USD: the value of {@link #openingAmount}. */
    public double openingUsd(int opening) {
        return inPackages(openings[opening]) * item.price().mean();
    }

    /** Expected price of what a wall uses of it, USD. */
    public double wallUsd(int wall) {
        return inPackages(walls[wall]) * item.price().mean();
    }

    /** Expected price of what the house uses of it once, USD. */
    public double houseUsd() {
        return inPackages(house) * item.price().mean();
    }

    /** What one opening uses of it, without the rest of a package. */
    public Amount openingAmount(int opening) {
        return shareOf(openings[opening]);
    }

    /** What walls or the house use of it, without the rest of a package. */
    public Amount sharedAmount() {
        return shareOf(shared());
    }

    /** The rest of the last package. */
    public Amount remainderAmount() {
        return Amount.product(
                item.tradeName() + ", rest of the last package",
                "USD",
                List.of(Amount.given("packages", remainderPackages(), "packages"), pricePerPackage()));
    }

    /** Expected price of the rest of the last package, USD: the value of {@link #remainderAmount}. */
    public double remainderUsd() {
        return remainderPackages() * item.price().mean();
    }

    private double remainderPackages() {
        return packages() - inPackages(driverQuantity());
    }

    private Amount shareOf(double quantity) {
        List<Amount> parts = List.of(
                Amount.formula(
                        "packages used",
                        inPackages(quantity),
                        "packages",
                        List.of(
                                Amount.product("stock needed", item.unit(), stockOf(quantity)),
                                given("in a package", item.packageSize(), item.unit()))),
                pricePerPackage());
        return Amount.product(item.tradeName(), "USD", parts);
    }

    private List<Amount> stockOf(double quantity) {
        String driver = item.driver().unit();
        return List.of(
                Amount.given("quantity", quantity, driver),
                given("stock for one", item.quantityPerDriver(), item.unit() + "/" + driver),
                Amount.formula(
                        "1 + waste", 1 + item.wasteFraction(), "", List.of(given("waste", item.wasteFraction(), ""))));
    }

    private Amount pricePerPackage() {
        ThreePoint price = item.price();
        return Amount.formula(
                "(low + 4 likely + high) / 6",
                price.mean(),
                "USD",
                List.of(
                        given("low", price.low(), "USD"),
                        given("likely", price.likely(), "USD"),
                        given("high", price.high(), "USD")));
    }

    private Amount given(String name, double value, String unit) {
        return Amount.given(name, value, unit, item.origin());
    }
}
