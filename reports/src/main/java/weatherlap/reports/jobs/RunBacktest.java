package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import weatherlap.analysis.backtest.Backtest;
import weatherlap.analysis.backtest.BacktestResult;
import weatherlap.analysis.calibration.Calibrator;
import weatherlap.analysis.callbacks.FittedFaultTables;
import weatherlap.analysis.money.FittedMoney;
import weatherlap.datasets.jobs.CallReader;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobReader;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.table.Loaded;
import weatherlap.reports.backtest.BacktestReport;
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
import weatherlap.sim.assumptions.Assumptions;

/**
 * Sets what a run foresees of finished jobs beside what happened.
 *
 * @param paths the portfolio holds houses that the records name
 * @param jobs the records; items stand beside them
 * @param calls service calls; empty: calls are not judged
 */
public record RunBacktest(InputPaths paths, Path jobs, Optional<Path> calls, OutputRequest output) {
    /** @throws BadInput with every problem of the tables or, where those are sound, of the records */
    public void run(Messages messages) throws IOException {
        Inputs inputs = Inputs.read(paths);
        Assumptions tables = inputs.assumptions().assumptions();
        JobHouses houses = JobHouses.of(inputs.portfolio().houses());
        Loaded<List<JobRecord>> read = JobReader.read(jobs, tables, houses);
        List<JobRecord> records = BadInput.unlessSound(read);
        if (records.size() < Backtest.ENOUGH_JOBS) {
            throw new BadInput(List.of(name() + ": holds " + records.size() + " jobs; " + Backtest.ENOUGH_JOBS
                    + " or more are needed, to hold some out"));
        }
        List<String> warnings = new ArrayList<>(inputs.warnings());
        warnings.addAll(TableNames.said(Warnings.grouped(read.warnings()), folder()));
        List<FollowedJob> followed = List.of();
        if (calls.isPresent()) {
            Loaded<List<FollowedJob>> called = CallReader.read(read, calls.get());
            followed = BadInput.unlessSound(called);
            TableNames.said(Warnings.grouped(called.warnings()), folder()).stream()
                    .filter(warning -> !warnings.contains(warning))
                    .forEach(warnings::add);
        }
        if (Calibrator.isFitted(tables) || FittedFaultTables.isFitted(tables) || FittedMoney.isFitted(tables)) {
            warnings.add(
                    "the assumptions were fitted to records before; where those hold these jobs, the tables have seen"
                            + " what they predict, and every score is too good");
        }
        messages.warn(warnings);
        BacktestResult result;
        try (Messages.Progress progress = messages.progress("foreseeing", Backtest.PARTS)) {
            result = Backtest.run(tables, records, followed, houses, inputs.rain(), Backtest.PARTS, progress::step);
        }
        if (result.amounts().isEmpty()) {
            throw new BadInput(List.of(
                    name() + ": keeps no hours, days, material, price or calls; nothing can be set beside a run"));
        }
        SortedMap<String, String> sums = sums(inputs);
        String assumed = "Weather of " + inputs.climate().name() + "; "
                + AssumedWords.of(inputs.assumptions(), paths.assumptions()) + ".";
        BacktestReport report = new BacktestReport(
                TableNames.of(jobs),
                assumed,
                result,
                warnings,
                RunSums.shown(
                        Map.of(),
                        paths.changes(),
                        sums,
                        RunSums.folders(paths.portfolio(), paths.assumptions(), Optional.of(folder()))));
        try (OutputFolder written = output.open(Stream.of(Stream.of(jobs), calls.stream(), paths.named().stream())
                .flatMap(named -> named)
                .toList())) {
            report.write(written);
            written.commit(new RunRecord(Version.current(), "backtest", settings(inputs), sums));
        }
        report.lines().forEach(messages::result);
        messages.note("what was predicted and what happened is in " + NextCommand.pages(output.folder(), "backtest"));
    }

    private Path folder() {
        return jobs.toAbsolutePath().normalize().getParent();
    }

    private String name() {
        Path file = jobs.toAbsolutePath().normalize().getFileName();
        return file == null ? jobs.toString() : file.toString();
    }

    private Map<String, Object> settings(Inputs inputs) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("jobs", name());
        settings.put("calls", calls.isPresent());
        settings.put("climate", inputs.climate().name());
        settings.put("changes", paths.changes());
        return settings;
    }

    private SortedMap<String, String> sums(Inputs inputs) throws IOException {
        SortedMap<String, String> sums = new TreeMap<>(inputs.checksums());
        RunSums.put(sums, name(), jobs);
        if (calls.isPresent()) {
            sums.put("jobs/" + Inputs.name(calls.get()), Checksum.of(calls.get()));
        }
        return sums;
    }
}
