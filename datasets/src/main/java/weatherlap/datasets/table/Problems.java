package weatherlap.datasets.table;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong while the reading goes on: errors, which stop the run, and warnings, which travel with it. */
public final class Problems {
    /** As many of each are kept; more are counted. */
    public static final int KEPT = 10_000;

    private final List<Problem> errors = new ArrayList<>();
    private final List<Problem> warnings = new ArrayList<>();
    private int errorCount;
    private int warningCount;

    public void error(String file, int row, String column, String message) {
        error(new Problem(file, row, column, message));
    }

    public void error(Problem problem) {
        if (errorCount++ < KEPT) {
            errors.add(problem);
        }
    }

    /** An error that means the whole file. */
    public void error(String file, String message) {
        error(file, 0, "", message);
    }

    public void warning(String file, int row, String column, String message) {
        warning(new Problem(file, row, column, message));
    }

    public void warning(Problem problem) {
        if (warningCount++ < KEPT) {
            warnings.add(problem);
        }
    }

    public boolean hasErrors() {
        return errorCount > 0;
    }

    public int errorCount() {
        return errorCount;
    }

    /** Errors as found; the last one says how many were not kept. */
    public List<Problem> errors() {
        return withRest(errors, errorCount);
    }

    public List<Problem> warnings() {
        return withRest(warnings, warningCount);
    }

    private static List<Problem> withRest(List<Problem> kept, int count) {
        if (count <= KEPT) {
            return List.copyOf(kept);
        }
        List<Problem> all = new ArrayList<>(kept);
        all.add(new Problem("input", 0, "", "and " + (count - KEPT) + " more like these"));
        return List.copyOf(all);
    }
}
