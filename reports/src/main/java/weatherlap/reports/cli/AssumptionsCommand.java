package weatherlap.reports.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import weatherlap.reports.jobs.WriteAssumptions;
import weatherlap.reports.options.AssumptionOptions;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.workbook.AssumptionsWorkbook;

@Command(
        name = "assumptions",
        description = "Writes out what the program assumes about your shop, as tables to edit: labor steps, materials,"
                + " units, wages, sightlines, lap faults, settings.",
        footer = {
            "",
            "Examples:",
            "  weatherlap assumptions --out my-assumptions",
            "  weatherlap assumptions --out my-assumptions.xlsx",
            "  weatherlap assumptions --assumptions my-assumptions --out the-same.xlsx",
            "  weatherlap compare my-houses --assumptions my-assumptions --out report"
        })
final class AssumptionsCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private AssumptionOptions assumptions;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        WriteAssumptions write = new WriteAssumptions(output.request(), assumptions.folder(), assumptions.changes());
        if (AssumptionsWorkbook.isAskedBy(write.output())) {
            new AssumptionsWorkbook(write.tables(common.messages())).write(write.output(), common.messages());
        } else {
            write.run(common.messages());
        }
        return 0;
    }
}
