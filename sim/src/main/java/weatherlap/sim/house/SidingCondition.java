package weatherlap.sim.house;

/** Whether siding that comes down will go back. */
public enum SidingCondition {
    SOUND,
    BRITTLE,
    MISINSTALLED,
    UNKNOWN
}
