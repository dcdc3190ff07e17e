package weatherlap.reports.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import weatherlap.reports.jobs.MakeHandout;

@Command(
        name = "handout",
        description = "Writes the homeowner's sheet for one house: handout.pdf and handout.html.",
        footer = {
            "",
            "Of a portfolio of many houses the rows of this one alone are read and checked.",
            "",
            "Examples:",
            "  weatherlap handout --house G0014 --out handout",
            "  weatherlap handout one-family --out handout",
            "  weatherlap handout my-houses --house 12 --paper a4 --out handout-12"
        })
final class HandoutCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private InputOptions input;

    @Mixin
    private HouseOption house;

    @Mixin
    private PaperOption paper;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        new MakeHandout(input.paths(), house.id(), paper.size(), output.request()).run(common.messages());
        return 0;
    }
}
