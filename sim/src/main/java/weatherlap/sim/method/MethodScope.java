package weatherlap.sim.method;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which methods a row applies to, as tables write it: {@code both} (every method), a method's name, or names as
 * {@code full_flange|insert}.
 */
public record MethodScope(Set<Method> methods) {
    /** Every method: {@code both}, a word from when there were two. */
    public static final MethodScope EVERY = new MethodScope(EnumSet.allOf(Method.class));

    private static final String EVERY_WORD = "both";

    public MethodScope {
        methods = Collections.unmodifiableSet(EnumSet.copyOf(methods));
    }

    public static MethodScope of(Method first, Method... more) {
        return new MethodScope(EnumSet.of(first, more));
    }

    public boolean covers(Method method) {
        return methods.contains(method);
    }

    /** Whether it covers one of them. */
    public boolean coversAny(Set<Method> some) {
        for (Method method : some) {
            if (methods.contains(method)) {
                return true;
            }
        }
        return false;
    }

    /** Words that may stand between bars, or alone. */
    public static List<String> words() {
        return Stream.concat(Arrays.stream(Method.values()).map(Method::word), Stream.of(EVERY_WORD))
                .toList();
    }

    /** @throws IllegalArgumentException where a word between bars is not one of {@link #words()} */
    public static MethodScope parse(String text) {
        EnumSet<Method> methods = EnumSet.noneOf(Method.class);
        for (String word : text.split("\\|", -1)) {
            if (word.strip().equals(EVERY_WORD)) {
                methods.addAll(EVERY.methods);
            } else {
                methods.add(Method.valueOf(word.strip().toUpperCase(Locale.ROOT)));
            }
        }
        return new MethodScope(methods);
    }
}
