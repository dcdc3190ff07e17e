package weatherlap.datasets.jobs;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.TextTable;

/**
 * A rate as an earlier fit left it in {@code labour-fit.csv}.
 *
 * @param minutes person-minutes for one unit of the driver
 * @param standardError of them
 */
public record EarlierRate(double minutes, double standardError) {
    private static final double MOST = 1e9;

    private static final Schema SCHEMA = new Schema(
            "labour-fit.csv",
            "rates as an earlier run fitted them",
            List.of(
                    Column.key("step_id", "key in labour-steps.csv"),
                    minutes("prior_minutes"),
                    minutes("fitted_minutes"),
                    minutes("standard_error"),
                    minutes("low_90"),
                    minutes("high_90"),
                    Column.number("jobs", "", 0, MOST, "records that say something about it")),
            List.of("step_id"));

    private static Column minutes(String name) {
        return Column.number(name, "person-minutes", 0, MOST, "as written by calibrate");
    }

    /** Rates by step id of the folder that an earlier run of {@code calibrate} wrote, or every problem in them. */
    public static Loaded<Map<String, EarlierRate>> read(Path folder) {
        Problems problems = new Problems();
        Optional<TextTable> table = Folder.of(folder).table(SCHEMA, problems);
        Map<String, EarlierRate> rates = new LinkedHashMap<>();
        table.ifPresent(t -> t.soundRows()
                .forEach(row -> rates.put(
                        row.text("step_id"),
                        new EarlierRate(row.number("fitted_minutes"), row.number("standard_error")))));
        return Loaded.of(table.map(t -> rates), problems);
    }
}
