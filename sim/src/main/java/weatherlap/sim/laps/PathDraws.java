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
     */
    void draw(PathTerms path, LeakCauses causes, double wettest, double[] dry) {
        terms = path;
        firstPosition = path.firstPosition();
        discounting = 0;
        warranted = 0;
        AdmittedShares.Fault admitted = causes.admitted().fault(path.fault());
        int[] draws = admitted.wet(path, wettest);
        wet = draws.length > 0;
        if (wet) {
            System.arraycopy(dry, 0, damage, 0, dry.length);
            draw(draws, admitted.logs(), causes);
        }
    }

    private void draw(int[] draws, double[] logAdmitted, LeakCauses causes) {
        double[] normal = causes.weatherNormal();
        int[] stratum = terms.stratum(causes);
        double[] strata = terms.standing();
        double[] table = terms.table().values;
        double first = terms.firstPosition();
        double perLog = terms.table().knotsPerLog;
        double perNormal = terms.knotsPerNormal();
        double last = LeakTable.lastPosition();
        boolean covered = terms.covered();
        double[] out = damage;
        double damaged = 0;
        double discounted = 0;
        double mended = 0;
        for (int d : draws) {
            double position = first + perLog * logAdmitted[d] + perNormal * normal[d];
            position = 0.5 * (position + Math.abs(position)); // or 0, without a branch that nobody foresees
            position = position < last ? position : last;
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
