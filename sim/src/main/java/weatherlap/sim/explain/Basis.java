package weatherlap.sim.explain;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How far a number can be trusted, best first. */
public enum Basis {
    STANDARD,
    HANDBOOK,
    DATASET,
    /** What the shop itself kept of its jobs. */
    OWN_RECORDS,
    /** What the shop itself knows, without records. */
    OWN_FIGURE,
    COMMON_PRACTICE,
    MEMORY,
    JUDGEMENT,
    INVENTED;

    private static final List<String> WORDS =
            Arrays.stream(values()).map(Basis::word).toList();

    /** As tables write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Of all, in their order. */
    public static List<String> words() {
        return WORDS;
    }

    /** A citation is owed: the first four must name their source. */
    public boolean needsSource() {
        return this == STANDARD || this == HANDBOOK || this == DATASET || this == OWN_RECORDS;
    }
}
