package weatherlap.sim.geometry;

import weatherlap.sim.Check;

/**
 * One rule held against one unit.
 *
 * @param finding the numbers, as a sentence without its section
 */
public record CodeCheck(CodeRule rule, Verdict verdict, String finding) {
    /** What the numbers say, best first. Never a ruling. */
    public enum Verdict {
        PASSES,
        /** Cannot be told from what was measured, or hangs on something else. */
        OPEN,
        FAILS
    }

    public CodeCheck {
        Check.text("finding", finding);
    }
}
