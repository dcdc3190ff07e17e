package weatherlap.reports.spark;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.input_file_name;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.lower;
import static org.apache.spark.sql.functions.monotonically_increasing_id;
import static org.apache.spark.sql.functions.struct;
import static org.apache.spark.sql.functions.to_csv;
import static org.apache.spark.sql.functions.trim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.table.Schema;
import weatherlap.reports.inputs.BadInput;

/**
 * The three tables of a portfolio as lines of CSV under the house that each belongs to.
 *
 * @param lines {@code house}, {@code table} (0 to 2, as in {@link PortfolioTables#ALL}), {@code file} and {@code place} (which together
 *     have the order of the table), {@code line}
 * @param headers of the three tables, a line each
 */
record HouseLines(Dataset<Row> lines, List<String> headers) {
    private static final String HOUSE = "house_id";
    private static final Map<String, String> CSV = Map.of(
            "header", "true",
            "escape", "\"",
            "mode", "FAILFAST",
            "ignoreLeadingWhiteSpace", "false",
            "ignoreTrailingWhiteSpace", "false");

    /**
     * Reads tables.
     *
     * @param folder any path that Spark reads
     * @param format as Spark calls it, such as csv; also the end of the names in the folder
     * @throws BadInput if a table has no column of houses
     */
    static HouseLines read(SparkSession spark, String folder, String format) {
        List<String> headers = new ArrayList<>();
        Dataset<Row> lines = null;
        for (Schema schema : PortfolioTables.ALL) {
            String file = schema.file().replaceFirst("csv$", format);
            Dataset<Row> table = spark.read().format(format).options(CSV).load(folder + "/" + file);
            headers.add(String.join(",", table.columns()));
            Dataset<Row> own = lines(table, file, headers.size() - 1);
            lines = lines == null ? own : lines.union(own);
        }
        return new HouseLines(lines, List.copyOf(headers));
    }

    private static Dataset<Row> lines(Dataset<Row> table, String file, int number) {
        String house = Arrays.stream(table.columns())
                .filter(name -> name.strip().equalsIgnoreCase(HOUSE))
                .findFirst()
                .orElseThrow(() -> new BadInput(List.of(file + ": has no column " + HOUSE)));
        Column[] texts = Arrays.stream(table.columns())
                .map(name -> table.col("`" + name + "`").cast("string"))
                .toArray(Column[]::new);
        return table.select(
                lower(trim(table.col("`" + house + "`").cast("string"))).as("house"),
                lit(number).as("table"),
                input_file_name().as("file"),
                monotonically_increasing_id().as("place"),
                to_csv(struct(texts), CSV).as("line"));
    }

    /** How many houses there are. */
    long houses() {
        return lines.where(col("table").equalTo(0)).count();
    }

    /** All lines of a house in one partition, one after another; houses in the order of their ids over the partitions. */
    Dataset<Row> byHouse(int partitions) {
        return sorted(lines.repartitionByRange(partitions, col("house")));
    }

    /** The same of some houses, in one partition. */
    Dataset<Row> byHouse(List<String> houses) {
        return sorted(lines.where(col("house").isin(houses.toArray())).coalesce(1));
    }

    private static Dataset<Row> sorted(Dataset<Row> lines) {
        return lines.sortWithinPartitions("house", "table", "file", "place").select("house", "table", "line");
    }
}
