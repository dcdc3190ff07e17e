package weatherlap.reports.page;

import java.util.List;

/**
 * The owner's report: the answer, the evidence, the houses, then how it was worked out and from what.
 *
 * @param title of the document
 * @param scope what was compared, in a line
 * @param answer sentences; the first is the answer itself
 * @param rule the default rule, line by line, as it hangs on the wall
 * @param regrets the rule beside what else a shop might do
 * @param ruleNotes what following it costs and how sure it is, in sentences
 * @param changes what would change the answer, in sentences
 * @param otherChoices one house with each choice of the scenario taken otherwise
 * @param keyFigures both methods side by side, means of a house
 * @param figures in the order of the argument
 * @param segments a table for each way of telling openings apart
 * @param houses index of the houses, in table order
 * @param houseSummary one row a house
 * @param traces where the numbers of the answer come from
 * @param method how it was worked out, paragraph by paragraph
 * @param cautions work that can hurt, and where to defer to codes
 * @param assumptions each row with its basis and source, table by table
 * @param warnings doubtful but usable input
 * @param run what is needed to repeat the run: name and value
 * @param notPrinted what the printing font lacks; empty: nothing
 */
public record ReportPage(
        String title,
        String scope,
        List<String> answer,
        List<String> rule,
        TableView regrets,
        List<String> ruleNotes,
        List<String> changes,
        TableView otherChoices,
        TableView keyFigures,
        List<Figure> figures,
        List<TableView> segments,
        List<HouseEntry> houses,
        TableView houseSummary,
        List<Trace> traces,
        List<String> method,
        List<String> cautions,
        List<TableView> assumptions,
        List<String> warnings,
        TableView run,
        String notPrinted) {
    public ReportPage {
        answer = List.copyOf(answer);
        rule = List.copyOf(rule);
        ruleNotes = List.copyOf(ruleNotes);
        changes = List.copyOf(changes);
        figures = List.copyOf(figures);
        segments = List.copyOf(segments);
        houses = List.copyOf(houses);
        traces = List.copyOf(traces);
        method = List.copyOf(method);
        cautions = List.copyOf(cautions);
        assumptions = List.copyOf(assumptions);
        warnings = List.copyOf(warnings);
    }
}
