package weatherlap.reports.calibrate;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weatherlap.analysis.calibration.Calibration;
import weatherlap.analysis.calibration.CalibrationTables;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.Html;
import weatherlap.reports.format.Pdf;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.TableWriter;
import weatherlap.reports.page.CalibrationPage;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.PlainTable;
import weatherlap.reports.page.TableView;

/**
 * Everything that {@code calibrate} writes, but for {@code run.json} and the assumptions.
 *
 * @param name of the job records, shown in titles
 * @param warnings doubtful but usable input
 * @param run what is needed to repeat the run: name and value, to show
 */
public record CalibrationReport(String name, Calibration calibration, List<String> warnings, Map<String, String> run) {
    /** Writes the tables, the page, the sheet and the pictures. */
    public void write(OutputFolder folder) throws IOException {
        TableWriter.CSV.write(
                folder, List.of(CalibrationTables.steps(calibration), CalibrationTables.jobs(calibration)));
        CalibrationPage page = page();
        for (Figure figure : page.figures()) {
            folder.write("charts/" + figure.name() + ".svg", Content.svg(figure.svg()));
        }
        folder.write("calibration.html", Content.of(Html.render("calibration.jte", page)));
        folder.write("calibration.pdf", Pdf.of(page.title(), Html.render("calibrationsheet.jte", page)));
    }

    /** The result in a few lines. */
    public List<String> lines() {
        CalibrationText text = new CalibrationText(calibration);
        List<String> lines = new ArrayList<>();
        lines.add(text.sentences().get(0));
        lines.addAll(PlainTable.lines(text.keyFigures()));
        lines.add("");
        lines.addAll(PlainTable.lines(text.mostMoved()));
        lines.add("");
        lines.add(text.setAsideSentence());
        lines.addAll(text.typing());
        return lines;
    }

    private CalibrationPage page() {
        CalibrationText text = new CalibrationText(calibration);
        TableView.Builder runTable = TableView.of("What the results depend on").texts("name", "value");
        run.forEach(runTable::row);
        return new CalibrationPage(
                "Labor rates fitted to " + name,
                text.scope() + ".",
                text.sentences(),
                text.keyFigures(),
                new CalibrationPictures(calibration)
                        .all().stream().map(Figure::of).toList(),
                text.rates(),
                text.setAside(),
                CalibrationText.METHOD,
                warnings,
                runTable.build());
    }
}
