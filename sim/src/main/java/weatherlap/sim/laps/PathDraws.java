package weatherlap.sim.laps;

/** What one path does in every draw of some causes: a column that is written over once the causes are others. */
final class PathDraws {
    /** Chance of damage within the horizon, by draw; means nothing where none does any. */
    final double[] damage;

    /** Whether any draw does damage. */
    boolean wet;

    /** Discounted damages within the horizon, for each damage within it. */
    double discounting;

    /** Likewise those that the shop mends. */
    double warranted;

    /** Another path of the same fault, drawn before. */
    PathDraws before;

    private PathTerms terms;

    /** Of the terms, by which most paths differ: many are gone through. */
    private double firstPosition;

    PathDraws(int draws) {
        damage = new double[draws];
    }

    boolean areOf(PathTerms path) {
        return firstPosition == path.firstPosition() && terms.sameDraws(path);
    }

    /**
     * @param wettest the greatest normal of the weather
     * @param dry no damage in any draw
     * @param position scratch, a number a draw
     */
    void draw(PathTerms path, LeakCauses causes, double wettest, double[] dry, double[] position) {
        terms = path;
        firstPosition = path.firstPosition();
        discounting = 0;
        warranted = 0;
        AdmittedShares.Fault admitted = causes.admitted().fault(path.fault());
        int[] draws = admitted.wet(path, wettest);
        wet = draws.length > 0;
        if (wet) {
            System.arraycopy(dry, 0, damage, 0, dry.length);
            place(draws, admitted.logs(), causes.weatherNormal(), position);
            draw(draws, position, causes);
        }
    }

    /** Where in the table each draw lies: by itself, since the long way from a position to its damage lets few draws overlap. */
    private void place(int[] draws, double[] logAdmitted, double[] normal, double[] position) {
        double first = terms.firstPosition();
        double perLog = terms.table().knotsPerLog;
        double perNormal = terms.knotsPerNormal();
        double last = LeakTable.lastPosition();
        for (int i = 0; i < draws.length; i++) {
            int d = draws[i];
            double at = first + perLog * logAdmitted[d] + perNormal * normal[d];
            at = 0.5 * (at + Math.abs(at)); // or 0, without a branch that nobody foresees
            position[i] = at < last ? at : last;
        }
    }

    private void draw(int[] draws, double[] positions, LeakCauses causes) {
        int[] stratum = terms.stratum(causes);
        double[] strata = terms.standing();
        double[] table = terms.table().values;
        boolean covered = terms.covered();
        double[] out = damage;
        double damaged = 0;
        double discounted = 0;
        double mended = 0;
        for (int i = 0; i < draws.length; i++) {
            int d = draws[i];
            double position = positions[i];
            int knot = (int) position;
            double share = position - knot;
            int at = knot * LeakTable.COLUMNS;
            double stands = strata[stratum[d]];
            double y = stands * (table[at + LeakTable.HORIZON] + share * table[at + LeakTable.HORIZON + 1]);
            out[d] = y;
            damaged += y;
            discounted += stands * (table[at + LeakTable.DISCOUNTED] + share * table[at + LeakTable.DISCOUNTED + 1]);
            if (covered) {
                mended += stands * (table[at + LeakTable.WARRANTY] + share * table[at + LeakTable.WARRANTY + 1]);
            }
        }
        if (damaged > 0) {
            discounting = discounted / damaged;
            warranted = mended / damaged;
        }
    }
}
