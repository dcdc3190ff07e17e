package weatherlap.reports.jobs;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.analysis.plan.PlanLine;
import weatherlap.datasets.site.Site;
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
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
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
    /** @throws BadInput with every problem of the tables, for a house that is not there or one without windows */
    public void run(Messages messages) throws IOException {
        OneHouse one = OneHouse.read(paths, house, messages);
        Inputs inputs = one.inputs();
        House found = one.house();
        messages.warn(inputs.warnings());
        String program = "weatherlap " + Version.current() + ", portfolio " + inputs.name() + ". "
                + WeatherWords.sheet(inputs.rain());
        HouseTakeoff takeoff = plan.takeoff(inputs, found);
        Optional<DesignWind> wind = inputs.weather().site().flatMap(Site::wind);
        Optional<RainDays> rain = Optional.of(inputs.rain())
                .filter(climate -> !climate.anyBearing())
                .map(climate -> climate.rainDays(inputs.scenario()));
        CrewSheet screen = CrewSheets.of(takeoff, wind, rain, paper, program, "");
        String notPrinted = Unprintable.note(Stream.of(found), "crewsheet.html");
        CrewSheet print =
                notPrinted.isEmpty() ? screen : CrewSheets.of(takeoff, wind, rain, paper, program, notPrinted);
        try (OutputFolder folder = output.open(paths.named())) {
            folder.write("crewsheet.html", Content.of("<!DOCTYPE html>\n" + Html.render("crewsheet.jte", screen)));
            folder.write("crewsheet.pdf", Pdf.of(CrewSheets.title(print), Html.render("crewsheet.jte", print)));
            Map<String, Object> settings = new LinkedHashMap<>();
            settings.put("portfolio", inputs.name());
            settings.put("house", found.id());
            settings.put(
                    "method", takeoff.single().map(Method::name).orElseGet(() -> PlanLine.of(found, methods(takeoff))));
            settings.put("paper", paper.word());
            settings.put("changes", paths.changes());
            folder.commit(new RunRecord(Version.current(), "crewsheet", settings, inputs.checksums()));
        }
        messages.note("the crew sheet is in " + NextCommand.pages(output.folder(), "crewsheet"));
    }

    private static List<Method> methods(HouseTakeoff takeoff) {
        return takeoff.openings().stream()
                .map(opening -> opening.geometry().method())
                .toList();
    }
}
