package weatherlap.reports.spark;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataType;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.reports.compare.ResultFiles;
import weatherlap.reports.format.Csv;
import weatherlap.reports.output.OutputRefused;

/**
 * The tables that hold every house, each a folder of files as Spark writes them.
 *
 * @param folder any path that Spark writes
 * @param parquet whether they stand as Parquet beside the CSV
 */
record RowFiles(SparkSession spark, String folder, boolean parquet) {
    /** @throws OutputRefused if something stands there */
    void refuseWhatStands() throws IOException {
        Path path = new Path(folder);
        if (path.getFileSystem(spark.sparkContext().hadoopConfiguration()).exists(path)) {
            throw new OutputRefused("--rows: " + folder + " is there already; name another");
        }
    }

    /** Writes each table, a file a partition: its header and the rows that {@code compare} writes of these houses, to the byte. */
    void write(JavaRDD<Part> parts) {
        for (int i = 0; i < ResultFiles.LAYOUTS.size(); i++) {
            Layout<?> layout = ResultFiles.LAYOUTS.get(i);
            String header = line(Csv.header(layout));
            int table = i;
            JavaRDD<String> texts = parts.mapPartitions(some -> texts(some, header, table));
            String file = folder + "/" + layout.file();
            spark.createDataset(texts.rdd(), Encoders.STRING()).write().text(file);
            if (parquet) {
                spark.read()
                        .schema(schema(layout))
                        .options(Map.of("header", "true", "multiLine", "true", "escape", "\"", "mode", "FAILFAST"))
                        .csv(file)
                        .write()
                        .parquet(file.replaceFirst("csv$", "parquet"));
            }
        }
    }

    private static Iterator<String> texts(Iterator<Part> parts, String header, int table) {
        Iterable<Part> all = () -> parts;
        Stream<String> rows = StreamSupport.stream(all.spliterator(), false)
                .map(part -> line(part.texts().get(table)))
                .filter(text -> !text.isEmpty());
        return parts.hasNext()
                ? Stream.concat(Stream.of(header), rows).iterator()
                : List.<String>of().iterator();
    }

    /** Without the end of its last line, which the writer sets. */
    private static String line(byte[] rows) {
        return new String(rows, 0, Math.max(0, rows.length - 1), StandardCharsets.UTF_8);
    }

    private static StructType schema(Layout<?> layout) {
        StructType schema = new StructType();
        for (ResultColumn<?> column : layout.columns()) {
            DataType type =
                    switch (column.kind()) {
                        case TEXT -> DataTypes.StringType;
                        case WHOLE -> DataTypes.LongType;
                        case NUMBER -> DataTypes.DoubleType;
                    };
            schema = schema.add(column.name(), type);
        }
        return schema;
    }
}
