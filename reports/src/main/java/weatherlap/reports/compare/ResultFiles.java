package weatherlap.reports.compare;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.leaks.HouseLeakTable;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.ElevationTable;
import weatherlap.analysis.tables.HouseTable;
import weatherlap.analysis.tables.OpeningTable;
import weatherlap.analysis.tables.ResultRows;
import weatherlap.reports.format.Csv;
import weatherlap.reports.output.OutputFolder;
import weatherlap.sim.Each;

/** The tables that hold every house, written while houses come. */
public final class ResultFiles implements AutoCloseable {
    /** One for each file, in their order. */
    public static final List<Layout<?>> LAYOUTS =
            List.of(HouseTable.LAYOUT, ElevationTable.LAYOUT, OpeningTable.LAYOUT, HouseLeakTable.LAYOUT);

    private final List<OutputStream> files = new ArrayList<>();

    /** Some houses in a row, and their rows of each file. */
    public record Rows(List<HouseChoice> choices, List<byte[]> texts) {
        /** Writes the rows in memory. */
        public static Rows of(List<HouseChoice> choices) {
            return new Rows(choices, Each.<ResultRows<?>, byte[]>of(rows(choices), Csv::rows));
        }
    }

    /** Begins the files. */
    public ResultFiles(OutputFolder folder) throws IOException {
        try {
            for (Layout<?> layout : LAYOUTS) {
                OutputStream file = folder.begin(layout);
                files.add(file);
                file.write(Csv.header(layout));
            }
        } catch (IOException e) {
            close();
            throw e;
        }
    }

    /** The tables of some houses, one for each file. */
    static List<ResultRows<?>> rows(List<HouseChoice> choices) {
        return List.of(
                HouseTable.rows(choices),
                ElevationTable.rows(choices),
                OpeningTable.rows(choices),
                HouseLeakTable.rows(choices));
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
