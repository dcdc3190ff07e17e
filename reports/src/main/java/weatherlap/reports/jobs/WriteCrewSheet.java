package weatherlap.reports.jobs;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.analysis.plan.PlanLine;
import weatherlap.datasets.shop.Letterhead;
import weatherlap.reports.crew.CrewSheet;
import weatherlap.reports.crew.CrewSheets;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.Html;
import weatherlap.reports.format.Pdf;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.inputs.OneHouse;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.reports.page.Paper;
import weatherlap.reports.page.Unprintable;
import weatherlap.reports.page.WeatherWords;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.rain.RainDays;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.wind.DesignWind;

/**
 * Writes the crew's sheet of one house.
 *
 * @param house its key; empty: the only one
 * @param plan what is done at each window
 */
public record WriteCrewSheet(InputPaths paths, OutputRequest output, String house, CrewPlan plan, Paper paper) {
    /** @throws BadInput with every problem of the tables, or for a house that is not there */
    public void run(Messages messages) throws IOException {
        Pdf.loadAhead();
        OneHouse one = OneHouse.read(paths, house, messages);
        Inputs inputs = one.inputs();
        messages.warn(inputs.warnings());
        RainClimate rain = inputs.rain();
        HouseTakeoff takeoff = plan.takeoff(inputs, rain, one.house());
        try (OutputFolder folder = output.open(paths.named())) {
            write(Site.of(inputs, rain), takeoff, folder::write);
            Map<String, Object> settings = settings(inputs, one.house().id());
            settings.put(
                    "method",
                    takeoff.single().map(Method::name).orElseGet(() -> PlanLine.of(one.house(), methods(takeoff))));
            folder.commit(new RunRecord(Version.current(), "crewsheet", settings, inputs.checksums()));
        }
        messages.note("the crew sheet is in " + NextCommand.pages(output.folder(), "crewsheet"));
    }

    /**
     * A sheet for every house of the portfolio.
     *
     * @throws BadInput with every problem of the tables
     */
    public void runAll(Messages messages) throws IOException {
        Pdf.loadAhead();
        Inputs inputs = Inputs.read(paths);
        messages.warn(inputs.warnings());
        RainClimate rain = inputs.rain();
        Site site = Site.of(inputs, rain);
        try (OutputFolder folder = output.open(paths.named())) {
            new SheetFolder("crewsheet", "Crew sheets", inputs)
                    .write(folder, (found, files) -> write(site, plan.takeoff(inputs, rain, found), files), messages);
            Map<String, Object> settings = settings(inputs, "all");
            settings.put("method", plan.line());
            folder.commit(new RunRecord(Version.current(), "crewsheet", settings, inputs.checksums()));
        }
        messages.note("the crew sheets are in " + SheetFolder.where(output));
    }

    /**
     * What is known of the place of the houses, and who comes there.
     *
     * @param program what was read, for the foot of a sheet
     */
    private record Site(Letterhead shop, Optional<DesignWind> wind, Optional<RainDays> rain, String program) {
        static Site of(Inputs inputs, RainClimate climate) {
            return new Site(
                    inputs.shop().letterhead(),
                    inputs.weather().site().flatMap(weatherlap.datasets.site.Site::wind),
                    Optional.of(climate)
                            .filter(known -> !known.anyBearing())
                            .map(known -> known.rainDays(inputs.scenario())),
                    "weatherlap " + Version.current() + ", portfolio " + inputs.name() + ". "
                            + WeatherWords.sheet(climate));
        }
    }

    private void write(Site site, HouseTakeoff takeoff, SheetFolder.Files files) throws IOException {
        String notPrinted = Unprintable.note(
                Stream.concat(site.shop().name().stream(), Unprintable.names(takeoff.house())), "crewsheet.html");
        CrewSheet screen = CrewSheets.of(site.shop(), takeoff, site.wind(), site.rain(), paper, site.program(), "");
        CrewSheet print = notPrinted.isEmpty()
                ? screen
                : CrewSheets.of(site.shop(), takeoff, site.wind(), site.rain(), paper, site.program(), notPrinted);
        files.write("crewsheet.html", Content.of("<!DOCTYPE html>\n" + Html.render("crewsheet.jte", screen)));
        files.write("crewsheet.pdf", Pdf.of(CrewSheets.title(print), Html.render("crewsheet.jte", print)));
    }

    private Map<String, Object> settings(Inputs inputs, String of) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("house", of);
        settings.put("paper", paper.word());
        settings.put("changes", paths.changes());
        return settings;
    }

    private static List<Method> methods(HouseTakeoff takeoff) {
        return takeoff.openings().stream()
                .map(opening -> opening.geometry().method())
                .toList();
    }
}
