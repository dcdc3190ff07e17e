package weatherlap.sim;

import java.util.Collection;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Sums that lose no digits to rounding as they grow, and keep what each addition lost beside them: the numbers that
 * {@link java.util.stream.DoubleStream#sum} gives, without a stream.
 *
 * @see "Kahan 1965, Communications of the ACM 8(1), 40 (compensated summation)"
 */
public final class Sum {
    private double sum;
    private double tooMuch;

    private Sum() {}

    public static double of(double[] values) {
        Sum sum = new Sum();
        for (double value : values) {
            sum.add(value);
        }
        return sum.total();
    }

    public static double of(Collection<Double> values) {
        Sum sum = new Sum();
        for (double value : values) {
            sum.add(value);
        }
        return sum.total();
    }

    /** Of what each element has. */
    public static <T> double of(List<T> all, ToDoubleFunction<? super T> value) {
        Sum sum = new Sum();
        for (int i = 0; i < all.size(); i++) {
            sum.add(value.applyAsDouble(all.get(i)));
        }
        return sum.total();
    }

    private void add(double value) {
        double exact = value - tooMuch;
        double next = sum + exact;
        tooMuch = next - sum - exact;
        sum = next;
    }

    private double total() {
        return sum - tooMuch;
    }
}
