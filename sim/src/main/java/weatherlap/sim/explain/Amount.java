package weatherlap.sim.explain;

import java.util.List;
import java.util.Optional;
import weatherlap.sim.Check;

/**
 * A named quantity and the parts it is made of.
 *
 * @param unit such as min, USD, ft²
 * @param rule how the parts make the value
 * @param parts empty for a leaf
 * @param origin the row a leaf comes from, where there is one
 */
public record Amount(String name, double value, String unit, Rule rule, List<Amount> parts, Optional<Origin> origin) {
    /** How parts make a value. */
    public enum Rule {
        /** Measured, or a row. */
        GIVEN,
        SUM,
        PRODUCT,
        /** The first part less the others. */
        DIFFERENCE,
        /** By an equation that the name states; the parts are its arguments. */
        FORMULA
    }

    public Amount {
        Check.text("name", name);
        Check.finite(name, value);
        parts = List.copyOf(parts);
    }

    public static Amount given(String name, double value, String unit) {
        return new Amount(name, value, unit, Rule.GIVEN, List.of(), Optional.empty());
    }

    public static Amount given(String name, double value, String unit, Origin origin) {
        return new Amount(name, value, unit, Rule.GIVEN, List.of(), Optional.of(origin));
    }

    public static Amount sum(String name, String unit, List<Amount> parts) {
        double total = 0;
        for (Amount part : parts) {
            total += part.value();
        }
        return new Amount(name, total, unit, Rule.SUM, parts, Optional.empty());
    }

    public static Amount product(String name, String unit, List<Amount> parts) {
        double product = 1;
        for (Amount part : parts) {
            product *= part.value();
        }
        return new Amount(name, product, unit, Rule.PRODUCT, parts, Optional.empty());
    }

    public static Amount difference(String name, String unit, Amount from, Amount less) {
        return new Amount(
                name, from.value() - less.value(), unit, Rule.DIFFERENCE, List.of(from, less), Optional.empty());
    }

    public static Amount formula(String name, double value, String unit, List<Amount> parts) {
        return new Amount(name, value, unit, Rule.FORMULA, parts, Optional.empty());
    }
}
