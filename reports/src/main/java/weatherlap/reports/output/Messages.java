package weatherlap.reports.output;

import java.util.List;

/** How a job speaks while it runs. */
public interface Messages {
    /** Something to know, for a person: not part of the result. */
    void note(String line);

    /** Doubtful but usable input, a line each. */
    default void warn(List<String> warnings) {
        warnings.forEach(warning -> note("warning: " + warning));
    }

    /** A line of the result itself. */
    void result(String line);

    /** The beginning of a stretch of work of so many steps; 0 where nobody knows how many. */
    Progress progress(String task, int steps);

    /** A stretch of work that is under way. Safe to call from several threads. */
    interface Progress extends AutoCloseable {
        void step();

        @Override
        void close();
    }
}
