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
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import weatherlap.analysis.calibration.Calibration;
import weatherlap.analysis.calibration.CalibrationOptions;
import weatherlap.analysis.calibration.Calibrator;
import weatherlap.analysis.callbacks.WarrantyRepairs;
import weatherlap.analysis.money.FittedMoney;
import weatherlap.analysis.money.MoneyFit;
import weatherlap.analysis.money.MoneyFitter;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.assumptions.CrewTable;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.jobs.EarlierRate;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobReader;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobStocks;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.table.Loaded;
import weatherlap.reports.calibrate.CalibrationReport;
import weatherlap.reports.inputs.BadInput;
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
import weatherlap.sim.rain.RainClimate;

/**
 * Fits labour rates, waste, prices and margin to job records and writes them as assumption tables.
 *
 * @param jobs the records
 * @param portfolio folder of the houses that the records name; empty: the work is made from the records alone
 * @param since folder that an earlier run wrote, to set its rates beside the new ones
 * @param assumptions folder to start from; empty: the bundled tables
 * @param changes of scalars, choices and wages, each NAME=VALUE
 */
public record Calibrate(
        Path jobs,
        Optional<Path> portfolio,
        Optional<Path> since,
        Optional<Path> assumptions,
        List<String> changes,
        OutputRequest output) {

    public Calibrate {
        changes = List.copyOf(changes);
    }

    /** @throws BadInput with every problem of the tables or, where those are sound, of the records */
    public void run(Messages messages) throws IOException {
        String name = name();
        Loaded<AssumptionTables> loaded = Inputs.assumptions(assumptions, changes);
        AssumptionTables tables = BadInput.unlessSound(loaded);
        Optional<JobHouses> houses =
                portfolio.map(folder -> JobHouses.of(BadInput.unlessSound(Portfolios.read(folder, tables.assumptions()))
                        .houses()));
        Map<String, EarlierRate> earlier = since.map(folder -> BadInput.unlessSound(EarlierRate.read(folder)))
                .orElse(Map.of());
        Loaded<List<JobRecord>> records = houses.map(h -> JobReader.read(jobs, tables.assumptions(), h))
                .orElseGet(() -> JobReader.read(jobs, tables.assumptions()));
        List<JobRecord> read = BadInput.unlessSound(records);
        List<String> warnings = new ArrayList<>(TableNames.said(
                Warnings.grouped(Stream.concat(loaded.warnings().stream(), records.warnings().stream())
                        .toList()),
                folder()));
        if (Calibrator.isFitted(tables.assumptions())) {
            warnings.add(
                    "labour-steps.csv: holds rates that were fitted to job records before; leave out the jobs of those"
                            + " records, or they count twice");
        }
        if (FittedMoney.isFitted(tables.assumptions())) {
            warnings.add("materials.csv: holds waste and prices that were fitted to job records before; leave out the"
                    + " jobs of those records, or they count twice");
        }
        Calibration calibration = Calibrator.calibrate(
                tables.assumptions(),
                read,
                houses.orElseGet(JobHouses::unmeasured),
                earlier,
                CalibrationOptions.ORDINARY);
        MoneyFit money = money(tables.assumptions(), read, houses.orElseGet(JobHouses::unmeasured));
        if (calibration.skipped().size() == read.size() && !money.isSeen()) {
            throw new BadInput(List.of(name + ": no job has person_hours or a timed step, so there is nothing to fit"));
        }
        messages.warn(warnings);
        write(name, calibration, money, tables, warnings, messages);
        messages.note("the fitted rates are in " + NextCommand.pages(output.folder(), "calibration"));
        messages.note("next: "
                + NextCommand.command(
                        "compare", "--assumptions", output.folder().resolve("assumptions"), "--out", "report"));
    }

    /** Repairs under the warranty are those that the tables expect in the weather of the demo. */
    private static MoneyFit money(Assumptions tables, List<JobRecord> jobs, JobHouses houses) {
        ToDoubleFunction<JobRecord> repairs = jobs.stream()
                        .anyMatch(job -> job.priceUsd().isPresent())
                ? WarrantyRepairs.of(jobs, houses, tables, RainClimate.of(DemoClimate.hourly(), tables.scenario()))::usd
                : job -> 0;
        return MoneyFitter.fit(tables, jobs, new JobStocks(tables, houses), repairs);
    }

    private Path folder() {
        return jobs.toAbsolutePath().normalize().getParent();
    }

    private String name() {
        Path file = jobs.toAbsolutePath().normalize().getFileName();
        if (file == null) {
            throw new BadInput(List.of(jobs + ": is a folder, not a file"));
        }
        return file.toString();
    }

    private void write(
            String name,
            Calibration calibration,
            MoneyFit money,
            AssumptionTables tables,
            List<String> warnings,
            Messages messages)
            throws IOException {
        SortedMap<String, String> inputs = new TreeMap<>();
        RunSums.put(inputs, name, jobs);
        tables.texts().forEach((file, text) -> inputs.put("assumptions/" + file, Checksum.ofText(text)));
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("jobs", name);
        settings.put("changes", changes);
        portfolio.ifPresent(folder -> settings.put("portfolio", Inputs.name(folder)));
        since.ifPresent(folder -> settings.put("since", Inputs.name(folder)));
        if (portfolio.isPresent()) {
            for (String file : PortfolioTables.FILES) {
                inputs.put("portfolio/" + file, Checksum.of(portfolio.get().resolve(file)));
            }
        }
        CalibrationReport report = new CalibrationReport(
                TableNames.of(jobs),
                calibration,
                money,
                warnings,
                RunSums.shown(
                        Map.of(), changes, inputs, RunSums.folders(portfolio, assumptions, Optional.of(folder()))));
        try (OutputFolder folder =
                output.open(Stream.of(Stream.of(jobs), assumptions.stream(), portfolio.stream(), since.stream())
                        .flatMap(paths -> paths)
                        .toList())) {
            report.write(folder);
            WriteAssumptions.write(FittedMoney.of(fitted(tables, calibration), money), "assumptions/", folder);
            folder.commit(new RunRecord(Version.current(), "calibrate", settings, inputs));
        }
        report.lines().forEach(messages::result);
    }

    private static AssumptionTables fitted(AssumptionTables tables, Calibration calibration) {
        AssumptionTables fitted = tables.withSteps(calibration.calibrated().steps())
                .with(calibration.calibrated().scenario());
        List<CrewTable.Pace> crews = calibration.crews().stream()
                .map(crew -> new CrewTable.Pace(crew.crew(), crew.factor(), crew.low(), crew.high(), crew.jobs()))
                .toList();
        return crews.isEmpty()
                ? fitted
                : fitted.withCrews(
                        crews, "the shop's own records of " + calibration.jobs().size() + " jobs");
    }
}
