package weatherlap.reports.inputs;

import java.util.List;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;

/** The input cannot be used: every problem found, one a line, before anything was written. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<String> problems;
    private final String next;

    public BadInput(List<String> problems) {
        this(problems, "");
    }

    /** @param next what to do about it, a line; empty: the problems say it themselves */
    public BadInput(List<String> problems, String next) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
        this.next = next;
    }

    /**
     * What was read.
     *
     * @throws BadInput with every error, where there are any
     */
    public static <T> T unlessSound(Loaded<T> loaded) {
        return loaded.value()
                .orElseThrow(() -> new BadInput(
                        loaded.errors().stream().map(Problem::toString).toList()));
    }

    public String next() {
        return next;
    }

    public List<String> problems() {
        return problems;
    }
}
