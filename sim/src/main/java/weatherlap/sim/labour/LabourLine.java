package weatherlap.sim.labour;

import java.util.List;
import java.util.stream.Stream;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Amount;

/**
 * A step at one place: quantity × minutes × factors.
 *
 * @param quantity in the unit of the step's driver
 * @param factors conditions that slow or speed the step, each 1 in ordinary conditions; those that do not bear on it are left out
 */
public record LabourLine(LabourStep step, double quantity, List<Amount> factors) {
    public LabourLine {
        Check.notNegative("quantity of ", step.id(), quantity);
        for (int f = 0; f < factors.size(); f++) {
            Check.positive(factors.get(f).name(), factors.get(f).value());
        }
        factors = List.copyOf(factors);
    }

    /** The product of the factors. */
    public double multiplier() {
        return times(1);
    }

    /** What a drawn value of the step's minutes is multiplied by. */
    public double weight() {
        return quantity * multiplier();
    }

    /** Expected person-minutes: quantity × mean × factors, the value of {@link #amount()}. */
    public double meanMinutes() {
        return times(quantity * step.minutes().mean());
    }

    private double times(double number) {
        double product = number;
        for (int f = 0; f < factors.size(); f++) {
            product *= factors.get(f).value();
        }
        return product;
    }

    /** Expected person-minutes of some lines together. */
    public static double meanMinutes(List<LabourLine> lines) {
        double minutes = 0;
        for (LabourLine line : lines) {
            minutes += line.meanMinutes();
        }
        return minutes;
    }

    /** Person-minutes as a tree, down to the row. */
    public Amount amount() {
        Stream<Amount> base =
                Stream.of(Amount.given("quantity", quantity, step.driver().unit()), minutesEach());
        return Amount.product(
                step.tradeName(), "min", Stream.concat(base, factors.stream()).toList());
    }

    private Amount minutesEach() {
        ThreePoint minutes = step.minutes();
        String unit = "min/" + step.driver().unit();
        return Amount.formula(
                "(low + 4 likely + high) / 6",
                minutes.mean(),
                unit,
                List.of(
                        Amount.given("low", minutes.low(), unit, step.origin()),
                        Amount.given("likely", minutes.likely(), unit, step.origin()),
                        Amount.given("high", minutes.high(), unit, step.origin())));
    }
}
