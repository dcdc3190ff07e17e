package weatherlap.sim.house;

/** Result of a test of the old paint for lead. */
public enum LeadTest {
    POSITIVE,
    NEGATIVE,
    UNKNOWN
}
