package weatherlap.analysis.drivers;

import java.util.Locale;

/** What is asked of the portfolio; the first is that of {@link Differences#costUsd()}, the second of {@link Differences#risk()}. */
public enum Outcome {
    COST_DIFFERENCE,
    RISK_DIFFERENCE;

    /** As tables call it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
