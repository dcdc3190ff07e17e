package weatherlap.reports.cli;

import java.io.PrintWriter;
import java.util.stream.Collectors;
import weatherlap.reports.workbook.InputWorkbooks;

/** Lines in the words of a user who named workbooks. */
final class SaidWriter extends PrintWriter {
    private final InputWorkbooks workbooks;

    SaidWriter(PrintWriter out, InputWorkbooks workbooks) {
        super(out);
        this.workbooks = workbooks;
    }

    @Override
    public void println(String lines) {
        super.println(lines.lines().map(workbooks::said).collect(Collectors.joining("\n")));
    }
}
