package weatherlap.sim.code;

import java.util.function.Supplier;

/**
 * One rule held against one unit.
 *
 * @param words the finding, put into words only where someone reads it: most checks of a run are counted and never read
 */
public record CodeCheck(CodeRule rule, Verdict verdict, Supplier<String> words) {
    /** What the numbers say, best first. Never a ruling. */
    public enum Verdict {
        PASSES,
        /** Cannot be told from what was measured, or hangs on something else. */
        OPEN,
        FAILS
    }

    /** The numbers, as a sentence without its section. */
    public String finding() {
        return words.get();
    }
}
