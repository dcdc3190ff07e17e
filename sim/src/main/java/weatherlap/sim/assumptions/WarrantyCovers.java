package weatherlap.sim.assumptions;

/** Which leaks the shop mends at its own cost within the years of its warranty; all others are the family's. */
public enum WarrantyCovers {
    /** Leaks of laps that the crew itself made. */
    OWN_WORK,
    /** Those of laps that were in the wall before, too. */
    ANY_LEAK,
    NOTHING;

    /** As in "a warranty that covers …". */
    public String inWords() {
        return switch (this) {
            case OWN_WORK -> "leaks of the crew's own work";
            case ANY_LEAK -> "any leak";
            case NOTHING -> "no leak";
        };
    }

    public boolean covers(FaultKind kind) {
        return switch (this) {
            case OWN_WORK -> kind == FaultKind.NEW;
            case ANY_LEAK -> true;
            case NOTHING -> false;
        };
    }
}
