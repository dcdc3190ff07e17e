package weatherlap.analysis.plan;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.sim.house.Opening;
import weatherlap.sim.run.PlanParts.Way;

/** Why a method is closed; what cannot be built stands before what may not be, what concerns one opening before what concerns all. */
public enum Limit {
    /** Of a method that the cladding leaves no way for, all over the house. */
    BEHIND_MASONRY("no unit fits behind masonry"),
    NO_UNIT_FITS("no unit fits the opening"),
    ROTTEN_FRAME("a rotten frame cannot keep an insert"),
    ESCAPE_LOST("an escape opening would be lost"),
    /** Of the whole plan, never of an opening. */
    RISK_LIMIT("the chance of leak damage is over the limit");

    private final String word = name().toLowerCase(Locale.ROOT);
    private final String words;

    Limit(String words) {
        this.words = words;
    }

    /** The limits that one way of doing an opening breaks by itself. */
    static Set<Limit> brokenBy(Opening opening, Way way) {
        EnumSet<Limit> broken = EnumSet.noneOf(Limit.class);
        for (String flag : way.codeFlags()) {
            if (flag.equals(NO_UNIT_FITS.word)) {
                broken.add(NO_UNIT_FITS);
            } else if (flag.equals(ESCAPE_LOST.word)) {
                broken.add(ESCAPE_LOST);
            }
        }
        if (way.method().keepsOldFrame() && opening.frame().rotten()) {
            broken.add(ROTTEN_FRAME);
        }
        return broken;
    }

    /** As tables have it. */
    public String word() {
        return word;
    }

    public String words() {
        return words;
    }

    /** Some of them as tables have them. */
    public static String joined(Set<Limit> limits) {
        return limits.stream().map(Limit::word).collect(Collectors.joining(";"));
    }
}
