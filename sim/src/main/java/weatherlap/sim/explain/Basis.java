package weatherlap.sim.explain;

/** How far a number can be trusted, best first. */
public enum Basis {
    STANDARD,
    HANDBOOK,
    DATASET,
    /** What the shop itself kept of its jobs. */
    OWN_RECORDS,
    /** What the shop itself knows, without records. */
    OWN_FIGURE,
    COMMON_PRACTICE,
    MEMORY,
    JUDGEMENT,
    INVENTED;

    /** A citation is owed: the first four must name their source. */
    public boolean needsSource() {
        return this == STANDARD || this == HANDBOOK || this == DATASET || this == OWN_RECORDS;
    }
}
