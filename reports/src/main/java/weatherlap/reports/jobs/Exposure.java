package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.analysis.exposure.ExposureTable;
import weatherlap.analysis.exposure.RankWords;
import weatherlap.charts.study.ExposureRose;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.BundledRecord;
import weatherlap.datasets.climate.Climate;
import weatherlap.datasets.climate.ClimateReader;
import weatherlap.datasets.climate.ClimateReport;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.reports.format.Content;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.inputs.Weather;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.TableWriter;
import weatherlap.reports.output.Version;
import weatherlap.reports.output.Warnings;
import weatherlap.reports.weather.ExposureText;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.rain.DrivingRainRose;
import weatherlap.sim.rain.RainClimate;

/**
 * Driving rain by bearing from a file of hourly weather.
 *
 * @param climate files, read as one record, or the word of a bundled one
 * @param changes of scalars, each NAME=VALUE: the dry limit, the end of a spell
 * @param output where the table and the picture go; empty: nowhere
 */
public record Exposure(List<Path> climate, List<String> changes, Optional<OutputRequest> output) {
    private static final int STEP_DEG = 5;

    /** @throws BadInput with every problem of the file and the changes */
    public void run(Messages messages) throws IOException {
        Loaded<AssumptionTables> tables = Inputs.assumptions(Optional.empty(), changes);
        Loaded<Climate> read = ClimateReader.read(climate);
        if (tables.value().isEmpty() || read.value().isEmpty()) {
            throw new BadInput(Stream.concat(tables.errors().stream(), read.errors().stream())
                    .map(Problem::toString)
                    .toList());
        }
        Climate weather = read.value().orElseThrow();
        Scenario scenario = tables.value().orElseThrow().assumptions().scenario();
        RainClimate rain = RainClimate.of(weather.weather(), scenario);
        DrivingRainRose rose = DrivingRainRose.of(rain, STEP_DEG);
        messages.warn(Warnings.grouped(read.warnings()));
        ExposureText text = new ExposureText(weather.report(), rain.coverage(), credits());
        if (output.isPresent()) {
            write(output.get(), rose, weather.report(), scenario);
        }
        text.facts().forEach(messages::note);
        ExposureText.table(rose).forEach(messages::result);
        messages.result(RankWords.of(rose));
        messages.result(ExposureText.rainDays(rain.rainDays(scenario), scenario));
        output.ifPresent(out -> messages.note("exposure.csv and exposure.svg are in " + out.folder()));
    }

    private void write(OutputRequest request, DrivingRainRose rose, ClimateReport report, Scenario scenario)
            throws IOException {
        try (OutputFolder folder = request.open(climate)) {
            TableWriter.CSV.write(folder, List.of(ExposureTable.of(rose)));
            folder.write("exposure.svg", Content.svg(picture(rose, report).svg()));
            Map<String, Object> settings = new LinkedHashMap<>();
            settings.put("ground_limit_mm", scenario.value(Scalar.GROUND_LIMIT_MM));
            settings.put("spell_dry_hours", scenario.value(Scalar.SPELL_DRY_HOURS));
            folder.commit(new RunRecord(Version.current(), "exposure", settings, Weather.checksums(climate)));
        }
    }

    private List<String> credits() {
        return climate.stream()
                .flatMap(file -> BundledRecord.of(file).stream())
                .map(BundledRecord::credit)
                .toList();
    }

    private ExposureRose picture(DrivingRainRose rose, ClimateReport report) {
        return new ExposureRose(
                report.file() + ", " + report.years(),
                "ISO 15927-3 airfield index",
                "ASHRAE 160 load",
                rose.rows().stream()
                        .map(row -> new ExposureRose.Ray(
                                row.bearingDeg(), row.isoLitresPerM2Year(), row.ashraeLitresPerM2Year()))
                        .toList());
    }
}
