package weatherlap.reports.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.jobs.CallSchema;
import weatherlap.datasets.jobs.JobSchema;
import weatherlap.datasets.jobs.TemplateJobs;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.portfolio.TemplatePortfolio;
import weatherlap.datasets.shop.ShopFile;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.workbook.WorkbookTables;
import weatherlap.reports.format.Content;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFile;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRefused;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;

/**
 * Writes a portfolio to fill in: the three tables with one made-up house, the file of a shop, notes, and what each column holds.
 *
 * @param records whether to write tables of jobs and service calls too
 */
public record WriteTemplate(boolean records, OutputRequest output) {
    public void run(Messages messages) throws IOException {
        if (WorkbookTables.isNamedSo(output.folder())) {
            writeWorkbook(messages);
            return;
        }
        try (OutputFolder folder = output.open(List.of())) {
            for (Schema table : PortfolioTables.ALL) {
                folder.write(table.file(), Content.of(TemplatePortfolio.bytes(table.file())));
            }
            folder.write("NOTES.txt", Content.of(TemplatePortfolio.bytes("NOTES.txt")));
            folder.write(ShopFile.FILE, Content.of(ShopFile.template()));
            if (records) {
                for (String file : TemplateJobs.FILES) {
                    folder.write(file, Content.of(TemplateJobs.bytes(file)));
                }
            }
            folder.write("columns.csv", Content.of(columns()));
            folder.commit(new RunRecord(Version.current(), "generate", settings(), new TreeMap<>()));
        }
        messages.note("three tables with an example house are in " + output.folder()
                + "; read NOTES.txt there and put your houses in its place"
                + (records ? "; jobs.csv and callbacks.csv hold an example job and a call (see RECORDS.txt)" : ""));
        messages.note("next: " + NextCommand.command("check", output.folder()));
    }

    private void writeWorkbook(Messages messages) {
        refuseOtherEnding(output.folder());
        OutputFile.write(output.folder(), TemplateWorkbook.of(records));
        messages.note(
                "an example house is in " + output.folder() + "; its first sheet says how to put yours in its place");
        messages.note("next: " + NextCommand.command("check", output.folder()));
    }

    static void refuseOtherEnding(Path workbook) {
        if (!workbook.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            throw new OutputRefused(workbook + ": the name of a workbook must end in .xlsx");
        }
    }

    private Map<String, Object> settings() {
        return records ? Map.of("template", true, "records", true) : Map.of("template", true);
    }

    private String columns() {
        Stream<Schema> own = records
                ? Stream.of(JobSchema.of("jobs.csv", AssumptionTables.bundled().assumptions()), CallSchema.CALLBACKS)
                : Stream.empty();
        return columns(Stream.concat(PortfolioTables.ALL.stream(), own).toList());
    }

    /** What each column of some tables holds, as a table. */
    static String columns(List<Schema> tables) {
        return CsvText.line("table", "column", "must_be_filled", "holds", "meaning")
                + tables.stream()
                        .flatMap(table -> table.columns().stream()
                                .map(column -> CsvText.line(
                                        table.file(),
                                        column.name(),
                                        column.mayBeEmpty() ? "no" : "yes",
                                        column.type().expected(),
                                        column.meaning())))
                        .collect(Collectors.joining());
    }
}
