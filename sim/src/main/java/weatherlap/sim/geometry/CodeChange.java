package weatherlap.sim.geometry;

import java.util.Optional;

/** A rule before and after a window is replaced. */
public record CodeChange(CodeCheck before, CodeCheck after) {
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
    public boolean lost() {
        return after.verdict().compareTo(before.verdict()) > 0;
    }

    /** A short stable code for tables; empty where the new unit passes. */
    public Optional<String> flag() {
        return switch (after.verdict()) {
            case PASSES -> Optional.empty();
            case FAILS -> Optional.of(rule().key() + (lost() ? "_lost" : "_fails"));
            case OPEN -> Optional.of(rule().key() + (lost() ? "_lost" : "_check"));
        };
    }
}
