package weatherlap.reports.jobs;

import java.util.List;

/** The input cannot be used: every problem found, one a line, before anything was written. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<String> problems;

    public BadInput(List<String> problems) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
    }

    public List<String> problems() {
        return problems;
    }
}
