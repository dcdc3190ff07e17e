package weatherlap.reports.jobs;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.analysis.calibration.CalibrationOptions;
import weatherlap.analysis.callbacks.ExpectedCalls;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.ClimateCsv;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.generator.BundledMix;
import weatherlap.datasets.generator.HouseGenerator;
import weatherlap.datasets.generator.Mix;
import weatherlap.datasets.jobs.CallSchema;
import weatherlap.datasets.jobs.CallText;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.ItemTable;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobStocks;
import weatherlap.datasets.jobs.JobText;
import weatherlap.datasets.madeup.CallMaker;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.datasets.madeup.MoneyMaker;
import weatherlap.datasets.madeup.ShopMoney;
import weatherlap.datasets.portfolio.PortfolioText;
import weatherlap.datasets.site.SiteText;
import weatherlap.reports.format.Content;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.output.Checksum;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;

/**
 * Writes a synthetic portfolio and, where asked for, records of jobs of a made-up shop whose rates are known.
 *
 * @param houses how many, 1 or more
 * @param seed the same seed gives the same bytes
 * @param mix file of shares or the word of a bundled one; empty: that of New York
 * @param climate whether to write the weather of the invented town too
 * @param jobs how many job records to write beside, 0 for none
 */
public record Generate(long houses, long seed, Optional<Path> mix, boolean climate, int jobs, OutputRequest output) {
    /** Pace from shop to shop, coefficient of variation: that which calibrations presume. */
    private static final double PACE_SPREAD = CalibrationOptions.ORDINARY.paceSpread();
    /** Share of the jobs of which every step was timed; invented. */
    private static final double TIMED_SHARE = 0.2;

    /** Mean time from damage to the call; invented. */
    private static final double LAG_YEARS = 0.6;

    private static final int CALL_DRAWS = 64;

    /** @throws BadInput with every problem of the mix */
    public void run(Messages messages) throws IOException {
        Mix shares = shares();
        try (OutputFolder folder = output.open(mix.stream().toList())) {
            long openings = writeHouses(folder, new HouseGenerator(shares, seed));
            if (climate) {
                folder.write("climate.csv", Generate::writeClimate);
                folder.write(
                        SiteText.FILE,
                        Content.of(SiteText.write(DemoClimate.hourly().name(), "climate.csv")));
            }
            if (jobs > 0) {
                writeJobs(folder);
            }
            Map<String, Object> settings = new LinkedHashMap<>();
            settings.put("houses", houses);
            settings.put("seed", seed);
            settings.put("climate", climate);
            settings.put("jobs", jobs);
            SortedMap<String, String> inputs = new TreeMap<>();
            Optional<BundledMix> bundled = mix.flatMap(BundledMix::of);
            bundled.ifPresent(known -> settings.put("mix", known.word()));
            if (mix.isPresent() && bundled.isEmpty()) {
                inputs.put("mix/" + mix.get().getFileName(), Checksum.of(mix.get()));
            }
            folder.commit(new RunRecord(Version.current(), "generate", settings, inputs));
            messages.note(output.folder() + ": " + Numbers.count(houses, "house", "houses") + " with "
                    + Numbers.count(openings, "opening", "openings")
                    + (jobs == 0
                            ? ""
                            : ", and " + Numbers.count(jobs, "job", "jobs")
                                    + " in jobs.csv with the shop's rates in true-rates.csv, items bought in job-items.csv with waste and prices in true-money.csv, their service calls in callbacks.csv with the level"
                                    + " of leaks in true-callbacks.csv"));
            messages.note("next: " + NextCommand.command("compare", output.folder(), "--out", "report"));
        }
    }

    private Mix shares() {
        return mix.map(file -> BadInput.unlessSound(Mix.read(file))).orElseGet(() -> Mix.bundled(BundledMix.NEW_YORK));
    }

    private long writeHouses(OutputFolder folder, HouseGenerator generator) throws IOException {
        long openings = 0;
        try (OutputStream houseFile = folder.begin("houses.csv");
                OutputStream elevationFile = folder.begin("elevations.csv");
                OutputStream openingFile = folder.begin("openings.csv");
                Writer houseRows = writer(houseFile);
                Writer elevationRows = writer(elevationFile);
                Writer openingRows = writer(openingFile)) {
            PortfolioText text = new PortfolioText(houseRows, elevationRows, openingRows);
            for (Iterator<House> made = generator.houses(houses).iterator(); made.hasNext(); ) {
                House house = made.next();
                text.add(house);
                openings += house.openingCount();
            }
        }
        return openings;
    }

    /** Where its last write fails, it leaves the file open: who opened that closes it. */
    private static Writer writer(OutputStream file) {
        return new BufferedWriter(new OutputStreamWriter(file, StandardCharsets.UTF_8));
    }

    private void writeJobs(OutputFolder folder) throws IOException {
        Assumptions tables = AssumptionTables.bundled().assumptions();
        MadeShop shop = MadeShop.drawn(tables, PACE_SPREAD, seed);
        double jobSpread = tables.scenario().value(Scalar.CREW_SPREAD);
        List<JobRecord> made = new JobMaker(tables, shop, jobSpread, TIMED_SHARE, seed).jobs(jobs);
        ShopMoney money = ShopMoney.drawn(tables, seed);
        MoneyMaker till = new MoneyMaker(tables, money, new JobStocks(tables, JobHouses.unmeasured()), seed);
        Map<Method, Double> levels = CallMaker.drawnLevels(seed);
        RainClimate weather = RainClimate.of(DemoClimate.hourly(), tables.scenario());
        ExpectedCalls model = new ExpectedCalls(JobHouses.unmeasured(), tables, weather, CALL_DRAWS);
        CallMaker maker = new CallMaker(
                levels, LAG_YEARS, (job, years) -> model.of(job).all().happened(years), seed);
        List<FollowedJob> followed = made.stream()
                .flatMap(job -> maker.followed(till.paid(job)).stream())
                .toList();
        List<JobRecord> records = followed.stream().map(FollowedJob::job).toList();
        folder.write("jobs.csv", Content.of(JobText.of(records, tables)));
        folder.write(ItemTable.FILE, Content.of(ItemTable.text(records)));
        folder.write("true-money.csv", Content.of(money.text()));
        folder.write("true-rates.csv", Content.of(shop.text()));
        folder.write(
                CallSchema.FILE,
                Content.of(CallText.of(
                        followed.stream().flatMap(job -> job.calls().stream()).toList())));
        folder.write("true-callbacks.csv", Content.of(CallText.of(levels, LAG_YEARS)));
    }

    private static void writeClimate(OutputStream out) throws IOException {
        Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        for (Iterator<String> lines = ClimateCsv.lines(DemoClimate.hourly()).iterator(); lines.hasNext(); ) {
            writer.write(lines.next());
        }
        writer.flush();
    }
}
