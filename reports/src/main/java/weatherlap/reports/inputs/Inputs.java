package weatherlap.reports.inputs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.analysis.words.SightlineWords;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.assumptions.PriceDates;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.shop.OwnSeason;
import weatherlap.datasets.shop.Shop;
import weatherlap.datasets.shop.ShopFile;
import weatherlap.datasets.shortform.ShortPortfolio;
import weatherlap.datasets.table.Characters;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.workbook.SheetNames;
import weatherlap.reports.output.Checksum;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.Warnings;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.many.Ahead;
import weatherlap.sim.rain.HourlyWeather;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.Simulator;

/**
 * What a run reads, sound as a whole.
 *
 * @param name of the portfolio
 * @param shop unnamed where no file says who it is
 * @param warnings doubtful but usable
 * @param checksums SHA-256 of each file, by its kind and name; bundled ones stand for themselves by the version of the program
 */
public record Inputs(
        String name,
        Portfolio portfolio,
        AssumptionTables assumptions,
        Weather weather,
        Shop shop,
        List<String> warnings,
        SortedMap<String, String> checksums) {

    private static final String ASSUMPTIONS = "assumptions/";
    private static final String DEMO = "Drizzlewick, an invented town";

    /** How the tables of a folder are read, and held against the assumptions where those are sound. */
    @FunctionalInterface
    public interface PortfolioReading {
        Loaded<Portfolio> read(Path folder, Optional<Assumptions> assumptions);
    }

    /**
     * Reads everything.
     *
     * @throws BadInput with every problem of every file
     */
    public static Inputs read(InputPaths paths) {
        return read(paths, (folder, assumptions) -> assumptions
                .map(sound -> Portfolios.read(folder, sound))
                .orElseGet(() -> Portfolios.read(folder)));
    }

    /**
     * Reads all but the portfolio, which is left empty.
     *
     * @throws BadInput with every problem of every file
     */
    public static Inputs besidePortfolio(InputPaths paths) {
        return read(paths, (folder, assumptions) -> Loaded.of(new Portfolio(List.of())));
    }

    /**
     * Reads everything, a portfolio that the user names in a way of its own.
     *
     * @throws BadInput with every problem of every file
     */
    public static Inputs read(InputPaths paths, PortfolioReading reading) {
        Ahead<Loaded<Weather>> hours = Ahead.of(() -> Weather.read(paths));
        SortedMap<String, String> portfolioSums = portfolioSums(paths);
        FileReading reader = new FileReading();
        Loaded<ShopFile> shopFile = ShopReading.read(paths);
        Shop known = shopFile.value().orElse(ShopFile.NONE).shop();
        Loaded<AssumptionTables> tables = assumptions(paths.assumptions(), known.season(), paths.changes());
        Optional<Assumptions> sound = tables.value().map(AssumptionTables::assumptions);
        Optional<Portfolio> portfolio = reader.take(paths.portfolio()
                .map(folder -> reading.read(folder, sound))
                .orElseGet(() -> Loaded.of(DemoPortfolio.load())));
        Optional<AssumptionTables> assumptions = reader.take(tables);
        Optional<Weather> weather = reader.take(hours.get());
        Optional<ShopFile> shop = reader.take(shopFile);
        if (!reader.problems().isEmpty()) {
            throw refused(paths, reader.problems());
        }
        reader.warnings().addAll(PriceDates.old(assumptions.orElseThrow()));
        reader.warnings()
                .addAll(SightlineWords.exceptions(assumptions.orElseThrow().assumptions()));
        ShopReading.otherWarranty(
                        shop.orElseThrow().shop(),
                        assumptions.orElseThrow().assumptions().scenario())
                .ifPresent(reader.warnings()::add);
        paths.portfolio().flatMap(ShortPortfolio::saidOf).ifPresent(reader.warnings()::add);
        paths.portfolio().map(SheetNames::in).ifPresent(names -> reader.warnings()
                .replaceAll(names::said));
        SortedMap<String, String> sums =
                checksums(paths, portfolioSums, weather.orElseThrow(), assumptions.orElseThrow());
        sums.putAll(ShopReading.checksums(shop.orElseThrow()));
        String name = paths.called()
                .map(Characters::shown)
                .orElseGet(() -> paths.portfolio().map(Inputs::name).orElse(DEMO));
        return new Inputs(
                name,
                portfolio.orElseThrow(),
                assumptions.orElseThrow(),
                weather.orElseThrow(),
                shop.orElseThrow().shop(),
                reader.warnings(),
                sums);
    }

    /**
     * The same houses, weather and shop under other assumptions.
     *
     * @param paths as those that were read, but for assumptions and changes
     * @throws BadInput with every problem of the assumptions, or of houses that do not go together with them
     */
    public Inputs under(InputPaths paths) {
        Loaded<AssumptionTables> read = assumptions(paths.assumptions(), shop.season(), paths.changes());
        AssumptionTables other = read.value()
                .orElseThrow(() -> refused(
                        paths, read.errors().stream().map(Problem::toString).toList()));
        if (paths.portfolio().isPresent() && !Portfolios.fit(portfolio.houses(), other.assumptions())) {
            return read(paths); // which says where
        }
        SortedMap<String, String> sums = new TreeMap<>(checksums);
        sums.keySet().removeIf(file -> file.startsWith(ASSUMPTIONS));
        sums.putAll(sums(other));
        return new Inputs(name, portfolio, other, weather, shop, Warnings.grouped(read.warnings()), sums);
    }

    /**
     * Holds the tables of houses against what they were before they were read.
     *
     * @throws BadInput if one was edited since
     */
    public void refuseEdited(InputPaths paths) {
        List<String> edited = portfolioSums(paths).entrySet().stream()
                .filter(sum -> !sum.getValue().equals(checksums.get(sum.getKey())))
                .map(sum -> sum.getKey() + ": somebody edited it while it was read; run again (nothing was written)")
                .toList();
        if (!edited.isEmpty()) {
            throw new BadInput(edited);
        }
    }

    /** SHA-256 of the tables that are there; of one that is not, its reader tells. */
    private static SortedMap<String, String> portfolioSums(InputPaths paths) {
        SortedMap<String, String> sums = new TreeMap<>();
        paths.portfolio().ifPresent(folder -> {
            for (String file : PortfolioTables.FILES) {
                Path table = folder.resolve(file);
                try {
                    if (Files.isRegularFile(table) && Files.isReadable(table)) {
                        sums.put("portfolio/" + file, Checksum.of(table));
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        });
        return sums;
    }

    /** What a portfolio is called: its folder; a root has no name of its own. */
    public static String name(Path portfolio) {
        Path whole = portfolio.toAbsolutePath().normalize();
        Path last = whole.getFileName();
        return Characters.shown((last == null ? whole : last).toString());
    }

    /** The hours of the weather. */
    public HourlyWeather climate() {
        return weather.hours();
    }

    /** Rain on walls of this weather. */
    public RainClimate rain() {
        return RainClimate.of(climate(), scenario());
    }

    public Scenario scenario() {
        return assumptions.assumptions().scenario();
    }

    /** Seed of the scenario. */
    public long seed() {
        return (long) scenario().value(Scalar.SEED);
    }

    /** A simulator of these assumptions and this weather, with the draws and the seed of the scenario. */
    public Simulator simulator() {
        return simulator(scenario());
    }

    /** The same with another scenario. */
    public Simulator simulator(Scenario changed) {
        return simulator(changed, rain());
    }

    /** The same with the rain that is known already. */
    public Simulator simulator(Scenario changed, RainClimate rain) {
        return new Simulator(
                assumptions.assumptions().with(changed),
                rain,
                scenario().choice(Choice.SAMPLING, Sampling.class),
                scenario().whole(Scalar.DRAWS),
                seed());
    }

    /** The assumptions with the changes of the command line; problems of the tables come before those of the changes. */
    public static Loaded<AssumptionTables> assumptions(Optional<Path> folder, List<String> changes) {
        return assumptions(folder, Shop.UNNAMED.season(), changes);
    }

    private static Loaded<AssumptionTables> assumptions(Optional<Path> folder, OwnSeason season, List<String> changes) {
        Loaded<AssumptionTables> read = folder.map(AssumptionTables::read)
                .orElseGet(() -> new Loaded<>(Optional.of(AssumptionTables.bundled()), List.of(), List.of()));
        if (read.value().isEmpty()) {
            return read;
        }
        Loaded<AssumptionTables> changed = read.value()
                .orElseThrow()
                .withOwn(season.scalars(), ShopFile.FILE)
                .with(changes);
        List<Problem> warnings = new ArrayList<>(read.warnings());
        warnings.addAll(changed.warnings());
        return new Loaded<>(changed.value(), changed.errors(), warnings);
    }

    private static SortedMap<String, String> checksums(
            InputPaths paths, Map<String, String> portfolio, Weather weather, AssumptionTables assumptions) {
        SortedMap<String, String> sums = new TreeMap<>(weather.checksums(paths));
        sums.putAll(portfolio);
        sums.putAll(sums(assumptions));
        return sums;
    }

    /** SHA-256 of each table, by its kind and name. */
    public static SortedMap<String, String> sums(AssumptionTables assumptions) {
        SortedMap<String, String> sums = new TreeMap<>();
        assumptions.texts().forEach((file, text) -> sums.put(ASSUMPTIONS + file, Checksum.ofText(text)));
        return sums;
    }

    /** What keeps a run of these files from going on, and what to do about it. */
    public static BadInput refused(InputPaths paths, List<String> problems) {
        return new BadInput(problems, next(paths, problems));
    }

    private static String next(InputPaths paths, List<String> problems) {
        Optional<Path> missing = paths.portfolio().filter(folder -> !Files.exists(folder));
        if (missing.isPresent()) {
            return "start your tables there with "
                    + NextCommand.command("generate", "--template", "--out", missing.get());
        }
        if (paths.portfolio().filter(Inputs::holdsNoTable).isPresent()) {
            return "name the folder of your houses, or start one with "
                    + NextCommand.command("generate", "--template", "--out", "my-houses");
        }
        if (problems.stream().allMatch(problem -> problem.startsWith("--set:"))) {
            return "you find names and ranges in scenario.toml and wages.csv, which "
                    + NextCommand.command("assumptions", "--out", "shop") + " writes";
        }
        return "fix this (nothing was written), then run " + NextCommand.command("check", paths.words());
    }

    private static boolean holdsNoTable(Path folder) {
        return PortfolioTables.FILES.stream().noneMatch(file -> Files.exists(folder.resolve(file)));
    }
}
