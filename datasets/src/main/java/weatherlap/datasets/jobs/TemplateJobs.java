package weatherlap.datasets.jobs;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;

/** Jobs and service calls to fill in: one made-up job with one call, and notes. */
public final class TemplateJobs {
    /** Names of the files. */
    public static final List<String> FILES = List.of("jobs.csv", CallSchema.FILE, "RECORDS.txt");

    private static final String EXAMPLE = "EXAMPLE";

    private TemplateJobs() {}

    /** One of {@link #FILES}. */
    public static byte[] bytes(String file) {
        try (InputStream in = TemplateJobs.class.getResourceAsStream("template/" + file)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Warns where a row is still that of the made-up job. */
    static void check(Row row, Problems problems) {
        if (row.text("job_id").equals(EXAMPLE)) {
            row.warning(
                    problems,
                    "job_id",
                    "this is the example job; it counts as one of yours until you delete it and its call");
        }
    }
}
