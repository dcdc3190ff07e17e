package weatherlap.reports.jobs;

import java.util.List;

/** The input cannot be used: every problem found, one a line, before anything was written. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<String> problems;
    private final String next;

    public BadInput(List<String> problems) {
        this(problems, "");
    }

    /** @param next what to do about it, a line; empty: the problems say it themselves */
    BadInput(List<String> problems, String next) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
        this.next = next;
    }

    public String next() {
        return next;
    }

    public List<String> problems() {
        return problems;
    }
}
