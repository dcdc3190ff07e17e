package weatherlap.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Short lists, gone through in a loop: what a stream gives, in the same order. A stream for a handful of things costs more than what is
 * done with them, and a house asks for thousands. The lists that come out cannot be changed.
 */
public final class Each {
    private Each() {}

    /** What a function makes of each. */
    public static <A, B> List<B> of(List<A> list, Function<? super A, ? extends B> function) {
        Object[] made = new Object[list.size()];
        for (int i = 0; i < made.length; i++) {
            made[i] = function.apply(list.get(i));
        }
        return listOf(made);
    }

    /** Likewise, in numbers. */
    public static <A> double[] numbers(List<A> list, ToDoubleFunction<? super A> function) {
        double[] made = new double[list.size()];
        for (int i = 0; i < made.length; i++) {
            made[i] = function.applyAsDouble(list.get(i));
        }
        return made;
    }

    /** What a function makes of each number from 0 to below the count. */
    public static <B> List<B> upTo(int count, IntFunction<? extends B> function) {
        Object[] made = new Object[count];
        for (int i = 0; i < count; i++) {
            made[i] = function.apply(i);
        }
        return listOf(made);
    }

    @SuppressWarnings("unchecked") // an array of objects holds anything, and nobody else sees it
    private static <B> List<B> listOf(Object[] made) {
        return (List<B>) List.of(made);
    }

    /** Those that a predicate holds for. */
    public static <A> List<A> where(List<A> list, Predicate<? super A> holds) {
        List<A> found = new ArrayList<>();
        for (A one : list) {
            if (holds.test(one)) {
                found.add(one);
            }
        }
        return List.copyOf(found);
    }

    /** Whether a predicate holds for one of them. */
    public static <A> boolean any(List<A> list, Predicate<? super A> holds) {
        for (A one : list) {
            if (holds.test(one)) {
                return true;
            }
        }
        return false;
    }
}
