package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import weatherlap.analysis.callbacks.CallbackFit;
import weatherlap.analysis.callbacks.CallbackFitter;
import weatherlap.analysis.callbacks.FittedFaultTables;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.jobs.CallReader;
import weatherlap.datasets.jobs.CallSchema;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.workbook.Beside;
import weatherlap.reports.callbacks.CallbackReport;
import weatherlap.reports.inputs.AssumedWords;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.inputs.TableNames;
import weatherlap.reports.output.Checksum;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.reports.output.Warnings;
import weatherlap.sim.rain.RainClimate;

/**
 * Fits the level of the leaks to jobs and their service calls and writes it as assumption tables.
 *
 * @param records folder of the jobs and their calls
 * @param paths the portfolio holds houses that the records name; empty: they are made from the records
 * @param lagYears mean time from damage to the call; empty: fitted
 */
public record Callbacks(Path records, InputPaths paths, OptionalDouble lagYears, OutputRequest output) {
    /** @throws BadInput with every problem of the tables or, where those are sound, of the records */
    public void run(Messages messages) throws IOException {
        Inputs inputs = paths.portfolio().isPresent() ? Inputs.read(paths) : Inputs.besidePortfolio(beside());
        AssumptionTables tables = inputs.assumptions();
        JobHouses houses = JobHouses.of(inputs.portfolio().houses());
        Loaded<List<FollowedJob>> read = CallReader.read(records, tables.assumptions(), houses);
        List<FollowedJob> jobs = BadInput.unlessSound(read);
        if (jobs.isEmpty()) {
            throw new BadInput(List.of("jobs.csv: no job has the day it was finished, so there is nothing to fit"));
        }
        List<String> warnings = new ArrayList<>(inputs.warnings());
        warnings.addAll(TableNames.said(Warnings.grouped(read.warnings()), records));
        if (FittedFaultTables.isFitted(tables.assumptions())) {
            warnings.add("lap-faults.csv: holds shares that were fitted to records before; leave out the jobs of those"
                    + " records, or they count twice");
        }
        messages.warn(warnings);
        RainClimate climate = inputs.rain();
        CallbackFit fit = CallbackFitter.fit(jobs, houses, tables.assumptions(), climate, lagYears);
        SortedMap<String, String> sums = sums(inputs);
        CallbackReport report = new CallbackReport(
                shownName(),
                fit,
                inputs.climate().name(),
                AssumedWords.of(inputs.assumptions(), paths.assumptions()),
                warnings,
                shown(sums));
        try (OutputFolder written = output.open(
                Stream.concat(Stream.of(records), paths.named().stream()).toList())) {
            report.write(written);
            WriteAssumptions.write(FittedFaultTables.of(tables, fit), "assumptions/", written);
            written.commit(new RunRecord(Version.current(), "callbacks", settings(inputs), sums));
        }
        report.lines().forEach(messages::result);
        messages.note("the fitted level is in " + NextCommand.pages(output.folder(), "callbacks"));
        messages.note("next: "
                + NextCommand.command(
                        "compare", "--assumptions", output.folder().resolve("assumptions"), "--out", "report"));
    }

    /** The folder of the records stands where a portfolio stands, so that a site beside it is found. */
    private InputPaths beside() {
        return new InputPaths(
                Optional.of(records), paths.assumptions(), paths.climate(), paths.site(), paths.changes());
    }

    private String name() {
        return Inputs.name(records);
    }

    /** Of a workbook the sheet of the calls. */
    private String shownName() {
        return Beside.from(records).isPresent() ? TableNames.of(records.resolve(CallSchema.FILE)) : name();
    }

    private Map<String, Object> settings(Inputs inputs) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("jobs", name());
        paths.portfolio().ifPresent(folder -> settings.put("portfolio", inputs.name()));
        settings.put("climate", inputs.climate().name());
        settings.put("changes", paths.changes());
        lagYears.ifPresent(lag -> settings.put("lag_years", lag));
        return settings;
    }

    private SortedMap<String, String> sums(Inputs inputs) throws IOException {
        SortedMap<String, String> sums = new TreeMap<>(inputs.checksums());
        if (paths.portfolio().isEmpty()) {
            sums.keySet().removeIf(file -> file.startsWith("portfolio/"));
        }
        for (String file : List.of("jobs.csv", CallSchema.FILE)) {
            sums.put("jobs/" + file, Checksum.of(records.resolve(file)));
        }
        return sums;
    }

    private Map<String, String> shown(SortedMap<String, String> sums) {
        Map<String, String> lag =
                lagYears.isPresent() ? Map.of("mean lag given", lagYears.getAsDouble() + " years") : Map.of();
        return RunSums.shown(
                lag,
                paths.changes(),
                sums,
                RunSums.folders(paths.portfolio(), paths.assumptions(), Optional.of(records)));
    }
}
