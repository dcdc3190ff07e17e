package weatherlap.reports.page;

import java.util.List;

/**
 * The analyst's page on a calibration: are the rates right, what moved, what does not fit, and how it was worked out.
 *
 * @param answer sentences; the first is the answer itself
 * @param figures in the order of the argument
 * @param rates one row a labour step
 * @param setAside one row a job that was left out
 * @param method how it was worked out, paragraph by paragraph
 * @param warnings doubtful but usable input
 * @param run what is needed to repeat the run: name and value
 */
public record CalibrationPage(
        String title,
        String scope,
        List<String> answer,
        TableView keyFigures,
        List<Figure> figures,
        TableView rates,
        TableView setAside,
        List<String> method,
        List<String> warnings,
        TableView run) {
    public CalibrationPage {
        answer = List.copyOf(answer);
        figures = List.copyOf(figures);
        method = List.copyOf(method);
        warnings = List.copyOf(warnings);
    }
}
