package weatherlap.sim.method;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Which methods a row applies to, as tables write it: {@code both} (every method), a method's name, or names as
 * {@code full_flange|insert}.
 *
 * @param mask the methods, each 1 &lt;&lt; ordinal: a house asks for them thousands of times
 */
public record MethodScope(int mask) {
    /** Every method: {@code both}, a word from when there were two. */
    public static final MethodScope EVERY = of(EnumSet.allOf(Method.class));

    private static final String EVERY_WORD = "both";

    public static MethodScope of(Method first, Method... more) {
        return of(EnumSet.of(first, more));
    }

    /** @param methods each of which may stand often */
    public static MethodScope of(Collection<Method> methods) {
        int mask = 0;
        for (Method method : methods) {
            mask |= 1 << method.ordinal();
        }
        return new MethodScope(mask);
    }

    /** In their order. */
    public List<Method> methods() {
        return Arrays.stream(Method.values()).filter(this::covers).toList();
    }

    public boolean covers(Method method) {
        return (mask >> method.ordinal() & 1) == 1;
    }

    /** Whether it covers one of them. */
    public boolean coversAny(MethodScope some) {
        return (mask & some.mask) != 0;
    }

    /** Words that may stand between bars, or alone. */
    public static List<String> words() {
        return Stream.concat(Arrays.stream(Method.values()).map(Method::word), Stream.of(EVERY_WORD))
                .toList();
    }

    /** @throws IllegalArgumentException where a word between bars is not one of {@link #words()} */
    public static MethodScope parse(String text) {
        int mask = 0;
        for (String word : text.split("\\|", -1)) {
            String name = word.strip();
            mask |= name.equals(EVERY_WORD) ? EVERY.mask : of(Method.valueOf(name.toUpperCase(Locale.ROOT))).mask;
        }
        return new MethodScope(mask);
    }
}
