package weatherlap.analysis.plan;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Why a method is closed at a wall. */
public enum Limit {
    ESCAPE_LOST("an escape opening would be lost"),
    ROTTEN_FRAME("a rotten frame cannot keep an insert"),
    NO_UNIT_FITS("no unit fits the opening"),
    RISK_LIMIT("the chance of leak damage is over the limit");

    private final String words;

    Limit(String words) {
        this.words = words;
    }

    /** As tables have it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String words() {
        return words;
    }

    /** Some of them as tables have them. */
    public static String joined(Set<Limit> limits) {
        return limits.stream().map(Limit::word).collect(Collectors.joining(";"));
    }
}
