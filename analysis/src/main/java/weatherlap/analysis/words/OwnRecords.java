package weatherlap.analysis.words;

import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.EarlierSource;
import weatherlap.sim.explain.Origin;

/** What a row says it rests on once the shop's own records have moved it. */
public final class OwnRecords {
    private static final String FITTED = "the shop's own records of ";

    private OwnRecords() {}

    /**
     * Of a row fitted to so many jobs.
     *
     * @param before of the row until now; where it was fitted before, what it rested on before that is kept
     */
    public static Origin origin(int jobs, Origin before) {
        String source = FITTED + (jobs == 1 ? "1 job" : jobs + " jobs") + ", shrunk towards the table"
                + EarlierSource.ofFirst(before.source(), FITTED);
        return new Origin(before.table(), before.row(), Basis.OWN_RECORDS, source);
    }

    /** Whether a row rests on records of jobs already. */
    public static boolean isFitted(String source) {
        return source.startsWith(FITTED);
    }
}
