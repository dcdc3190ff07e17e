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
    private Sum() {}

    public static double of(double[] values) {
        double sum = 0;
        double tooMuch = 0;
        for (double value : values) {
            double exact = value - tooMuch;
            double next = sum + exact;
            tooMuch = next - sum - exact;
            sum = next;
        }
        return sum - tooMuch;
    }

    public static double of(Collection<Double> values) {
        double[] all = new double[values.size()];
        int count = 0;
        for (double value : values) {
            all[count++] = value;
        }
        return of(all);
    }

    /** Of what each element has. */
    public static <T> double of(List<T> all, ToDoubleFunction<? super T> value) {
        return of(Each.numbers(all, value));
    }
}
