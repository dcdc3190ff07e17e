package weatherlap.reports.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import weatherlap.reports.jobs.FindSite;
import weatherlap.reports.options.OutputOptions;

@Command(
        name = "site",
        description =
                "Lists the weather stations near a place, tells you which weather files to download, and starts a site"
                        + " file. Downloads nothing itself.",
        footer = {
            "",
            "Examples:",
            "  weatherlap site --near Newark,NJ",
            "  weatherlap site --near 40.7,-74.2 --years 2014-2023 --out my-site"
        })
final class SiteCommand implements Callable<Integer> {
    private static final Pattern SPAN = Pattern.compile("(\\d{4})-(\\d{4})");
    private static final int EARLIEST = 1900;
    /** Stations that come with the program reported until then. */
    private static final int LATEST = 2023;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Option(
            names = "--near",
            required = true,
            paramLabel = "PLACE",
            description = "Latitude and longitude, such as 40.7,-74.2. Or a town and its state, such as Newark,NJ: only"
                    + " towns that a weather station is named for are found.")
    private String near;

    @Option(names = "--station", paramLabel = "ID", description = "Weather station to use (default: the nearest).")
    private String station;

    @Option(
            names = "--years",
            paramLabel = "FIRST-LAST",
            description = "Calendar years of weather (default: 2014-2023). Ten or more show how years differ.")
    private String years = "2014-2023";

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        Matcher span = SPAN.matcher(years);
        int first = span.matches() ? Integer.parseInt(span.group(1)) : 0;
        int last = span.matches() ? Integer.parseInt(span.group(2)) : 0;
        if (first < EARLIEST || last < first || last > LATEST) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--years " + years + ": give the first and the last year, within " + EARLIEST + "-" + LATEST);
        }
        new FindSite(near, Optional.ofNullable(station), first, last, output.requestIfNamed()).run(common.messages());
        return 0;
    }
}
