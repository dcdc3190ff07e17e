package weatherlap.sim.explain;

/** How far a number can be trusted, best first. */
public enum Basis {
    STANDARD,
    HANDBOOK,
    DATASET,
    COMMON_PRACTICE,
    MEMORY,
    JUDGEMENT,
    INVENTED;

    /** A citation is owed: the first three must name their source. */
    public boolean needsSource() {
        return this == STANDARD || this == HANDBOOK || this == DATASET;
    }
}
