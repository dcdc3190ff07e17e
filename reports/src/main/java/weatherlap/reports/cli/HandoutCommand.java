package weatherlap.reports.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import weatherlap.reports.jobs.MakeHandout;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.SheetOptions;

@Command(
        name = "handout",
        description = "Writes the family's sheet for one house: handout.pdf, two pages, and handout.html.",
        footer = {
            "",
            "Of a portfolio of many houses the rows of this one alone are read and checked.",
            "",
            "Examples, the first in the bundled demo:",
            "  weatherlap handout --house G0014 --out handout",
            "  weatherlap handout my-houses --paper a4 --out handout-a4"
        })
final class HandoutCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private SheetOptions sheet;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        new MakeHandout(sheet.paths(), sheet.house(), sheet.paper(), output.request()).run(common.messages());
        return 0;
    }
}
