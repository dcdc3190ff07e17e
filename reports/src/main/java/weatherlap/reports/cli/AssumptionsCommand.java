package weatherlap.reports.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.jobs.WriteAssumptions;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.SetOptions;
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
            "  weatherlap compare my-houses --assumptions my-assumptions --out report"
        })
final class AssumptionsCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private SetOptions set;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        if (AssumptionsWorkbook.isAskedBy(output.request())) {
            AssumptionTables tables = BadInput.unlessSound(Inputs.assumptions(Optional.empty(), set.changes()));
            new AssumptionsWorkbook(tables).write(output.request(), common.messages());
        } else {
            new WriteAssumptions(output.request(), set.changes()).run(common.messages());
        }
        return 0;
    }
}
