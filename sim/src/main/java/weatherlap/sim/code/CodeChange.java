package weatherlap.sim.code;

import java.util.Optional;

/**
 * A rule before and after a window is replaced.
 *
 * @param relieved the code itself lets a replacement stand worse here; the local official decides
 */
public record CodeChange(CodeCheck before, CodeCheck after, boolean relieved) {
    public CodeChange {
        if (before.rule() != after.rule()) {
            throw new IllegalArgumentException(
                    "The rule before (" + before.rule() + ") must be the rule after (" + after.rule() + ").");
        }
    }

    public CodeRule rule() {
        return after.rule();
    }

    /** The new unit stands worse than the old one: it passed today and will not, or fails what was open. */
    public boolean worse() {
        return after.verdict().compareTo(before.verdict()) > 0;
    }

    /** It stands worse, and nothing lets it. */
    public boolean lost() {
        return worse() && !relieved;
    }

    /** The new unit passes. */
    public boolean passes() {
        return after.verdict() == CodeCheck.Verdict.PASSES;
    }

    /** A short stable code for tables; empty where the new unit passes. */
    public Optional<String> flag() {
        return passes() ? Optional.empty() : Optional.of(rule().flag(standing()));
    }

    private CodeRule.Standing standing() {
        if (worse()) {
            return relieved ? CodeRule.Standing.RELIEVED : CodeRule.Standing.LOST;
        }
        return after.verdict() == CodeCheck.Verdict.FAILS ? CodeRule.Standing.FAILS : CodeRule.Standing.CHECK;
    }
}
