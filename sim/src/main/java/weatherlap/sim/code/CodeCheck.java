package weatherlap.sim.code;

/**
 * One rule held against one unit.
 *
 * @param told tells the finding to whoever puts it into words
 */
public record CodeCheck(CodeRule rule, Verdict verdict, Finding.Told told) {
    /** What the numbers say, best first. Never a ruling. */
    public enum Verdict {
        PASSES,
        /** Cannot be told from what was measured, or hangs on something else. */
        OPEN,
        FAILS
    }
}
