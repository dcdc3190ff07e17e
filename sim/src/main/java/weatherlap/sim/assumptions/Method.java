package weatherlap.sim.assumptions;

import java.util.Locale;

/** The two ways to replace a window. */
public enum Method {
    FULL_FLANGE("full-flange", "full-flange"),
    INSERT("insert", "the insert");

    private final String label;
    private final String inSentence;

    Method(String label, String inSentence) {
        this.label = label;
        this.inSentence = inSentence;
    }

    public Method other() {
        return this == FULL_FLANGE ? INSERT : FULL_FLANGE;
    }

    /** As the trade writes it, such as {@code full-flange}. */
    public String label() {
        return label;
    }

    /** The label as it stands in a sentence, with its article where it has one. */
    public String inSentence() {
        return inSentence;
    }

    /** As tables write it, such as {@code full_flange}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
