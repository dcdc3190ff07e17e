package weatherlap.reports.output;

/** The folder asked for cannot be written to, for a reason its owner can mend; nothing in it was touched. */
public final class OutputRefused extends RuntimeException {
    private static final long serialVersionUID = 1;

    public OutputRefused(String message) {
        super(message);
    }

    public OutputRefused(String message, Throwable cause) {
        super(message, cause);
    }
}
