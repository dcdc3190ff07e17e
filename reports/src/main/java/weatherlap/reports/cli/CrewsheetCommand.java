package weatherlap.reports.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import weatherlap.reports.jobs.WriteCrewSheet;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.PlanOption;
import weatherlap.reports.options.SheetOptions;

@Command(
        name = "crewsheet",
        description =
                "Writes the crew's sheet for one house, by one method or window by window: each wall to scale, sizes"
                        + " to order, cut-backs, pick list, lap order.",
        footer = {
            "",
            "In a large portfolio, only the rows of this house are read and checked.",
            "",
            "Examples, the first in the bundled demo:",
            "  weatherlap crewsheet --house brick --method insert --out sheet",
            "  weatherlap crewsheet --house gable --method plan --out sheet",
            "  weatherlap crewsheet --all --method plan --out sheets",
            "  weatherlap crewsheet my-houses --house EXAMPLE --method full_flange --paper a4 --out sheet-a4"
        })
final class CrewsheetCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private SheetOptions sheet;

    @Mixin
    private PlanOption plan;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        WriteCrewSheet job =
                new WriteCrewSheet(sheet.paths(), output.request(), sheet.house(), plan.plan(), sheet.paper());
        if (sheet.all()) {
            job.runAll(common.messages());
        } else {
            job.run(common.messages());
        }
        return 0;
    }
}
