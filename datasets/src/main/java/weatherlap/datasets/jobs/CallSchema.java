package weatherlap.datasets.jobs;

import java.util.List;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Schema;

/** The columns of service calls. */
public final class CallSchema {
    /** Name of the table. */
    public static final String FILE = "callbacks.csv";

    public static final Schema CALLBACKS = new Schema(
            FILE,
            "service calls after finished jobs, one a row",
            List.of(
                    Column.key("job_id", "as in jobs.csv"),
                    Column.text("opening", "which window, as the shop names it").optional(),
                    Column.text("called", "day of the call, year-month-day"),
                    Column.word("cause", CallRecord.Cause.class, "what was found; empty: not kept")
                            .optional(),
                    Column.yesNo("damage", "whether water had done damage; empty: not kept")
                            .optional(),
                    Column.number("cost_usd", "USD", 0, 1e6, "what mending cost")
                            .optional(),
                    Column.word("paid_by", CallRecord.PaidBy.class, "who paid").optional()),
            List.of(),
            false);

    private CallSchema() {}
}
