package weatherlap.reports.compare;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.columns.Schema;
import weatherlap.analysis.columns.Schemas;
import weatherlap.analysis.leaks.HouseLeakTable;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.tables.ResultTables;
import weatherlap.reports.output.Csv;
import weatherlap.reports.output.OutputFolder;
import weatherlap.sim.run.HouseResult;

/** The tables that hold every house, written while houses come. */
public final class ResultFiles implements AutoCloseable {
    private static final List<Schema> SCHEMAS =
            List.of(Schemas.HOUSES, Schemas.ELEVATIONS, Schemas.OPENINGS, Schemas.HOUSE_LEAKS);

    private final List<OutputStream> files = new ArrayList<>();

    /** Some houses in a row, and their rows of each file. */
    public record Rows(List<HouseChoice> choices, List<byte[]> texts) {
        /** Writes the rows in memory. */
        public static Rows of(List<HouseChoice> choices) {
            return new Rows(choices, tables(choices).stream().map(Csv::rows).toList());
        }
    }

    /** Begins the files. */
    public ResultFiles(OutputFolder folder) throws IOException {
        try {
            for (Schema schema : SCHEMAS) {
                OutputStream file = folder.begin(schema.file());
                files.add(file);
                file.write(Csv.header(schema));
            }
        } catch (IOException e) {
            close();
            throw e;
        }
    }

    /** The tables of some houses, one for each file. */
    static List<ResultTable> tables(List<HouseChoice> choices) {
        List<HouseResult> houses = choices.stream().map(HouseChoice::result).toList();
        return List.of(
                ResultTables.houses(choices),
                ResultTables.elevations(choices),
                ResultTables.openings(houses),
                HouseLeakTable.of(houses));
    }

    /** Adds rows at the end of each file. */
    public void add(Rows rows) {
        try {
            for (int i = 0; i < files.size(); i++) {
                files.get(i).write(rows.texts().get(i));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() throws IOException {
        IOException failed = null;
        for (OutputStream file : files) {
            try {
                file.close();
            } catch (IOException e) {
                failed = e;
            }
        }
        if (failed != null) {
            throw failed;
        }
    }
}
