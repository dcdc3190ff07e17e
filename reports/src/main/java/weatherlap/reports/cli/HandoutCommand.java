package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weatherlap.reports.jobs.MakeHandout;
import weatherlap.reports.page.Paper;

@Command(
        name = "handout",
        description = "Writes the homeowner's sheet for one house: handout.pdf and handout.html.",
        footer = {
            "",
            "Examples:",
            "  weatherlap handout --house G0014 --out handout",
            "  weatherlap handout my-houses --house 12 --paper a4 --out handout-12"
        })
final class HandoutCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "PORTFOLIO",
            arity = "0..1",
            description = "Folder with houses.csv, elevations.csv, openings.csv; else the bundled demo.")
    private Path portfolio;

    @Option(names = "--house", paramLabel = "ID", required = true, description = "Key of the house, as in houses.csv.")
    private String house;

    @Option(names = "--paper", paramLabel = "SIZE", description = "letter or a4. Else: letter.")
    private Paper paper = Paper.LETTER;

    @Mixin
    private InputOptions input;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        new MakeHandout(input.paths(portfolio), house, paper, output.request()).run(common.messages());
        return 0;
    }
}
