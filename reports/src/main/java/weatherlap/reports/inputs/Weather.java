package weatherlap.reports.inputs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.datasets.climate.BundledRecord;
import weatherlap.datasets.climate.Climate;
import weatherlap.datasets.climate.ClimateReader;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.site.Site;
import weatherlap.datasets.site.SiteFolder;
import weatherlap.datasets.site.SiteText;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.workbook.Beside;
import weatherlap.reports.output.Checksum;
import weatherlap.sim.rain.HourlyWeather;

/**
 * The weather of a run and the site of its houses. It is that of the houses where their site names it, and in the bundled demo, whose town
 * and weather are both invented; files and records that the command line names are tried out, wherever they come from.
 *
 * @param hours named by place and years; where they are not those of the houses, of any bearing
 * @param own whether it is the weather of the houses
 * @param read what was read of files; empty: the invented weather
 * @param site empty: not known
 */
public record Weather(HourlyWeather hours, boolean own, Optional<Climate> read, Optional<Site> site) {
    public Weather {
        hours = own ? hours : hours.ofAnyBearing();
    }

    /** Reads the site, if there is one, and the weather that is asked for. */
    public static Loaded<Weather> read(InputPaths paths) {
        Optional<Path> file = siteFile(paths);
        if (file.isEmpty()) {
            return withoutSite(paths);
        }
        Loaded<SiteFolder> read = SiteFolder.read(file.get());
        if (read.value().isEmpty()) {
            return new Loaded<>(Optional.empty(), read.errors(), read.warnings());
        }
        SiteFolder folder = read.value().orElseThrow();
        Optional<Site> site = Optional.of(folder.site());
        if (!paths.climate().isEmpty()) {
            return ClimateReader.read(paths.climate())
                    .map(climate -> new Weather(named(climate, paths.climate()), false, Optional.of(climate), site));
        }
        if (folder.site().weather().isEmpty()) {
            return Loaded.of(new Weather(DemoClimate.hourly(), false, Optional.empty(), site));
        }
        return folder.weather()
                .map(climate -> new Weather(
                        climate.weather()
                                .named(folder.site().place() + ", "
                                        + climate.report().years()),
                        true,
                        Optional.of(climate),
                        site));
    }

    private static Loaded<Weather> withoutSite(InputPaths paths) {
        if (paths.climate().isEmpty()) {
            boolean demo = paths.portfolio().isEmpty();
            return Loaded.of(new Weather(DemoClimate.hourly(), demo, Optional.empty(), Optional.empty()));
        }
        return ClimateReader.read(paths.climate())
                .map(climate ->
                        new Weather(named(climate, paths.climate()), false, Optional.of(climate), Optional.empty()));
    }

    private static HourlyWeather named(Climate climate, List<Path> files) {
        Optional<BundledRecord> bundled = files.size() == 1 ? BundledRecord.of(files.get(0)) : Optional.empty();
        return climate.weather()
                .named(bundled.map(BundledRecord::title)
                        .orElseGet(() -> climate.report().file() + ", "
                                + climate.report().years()));
    }

    /** The site file that is named, or that stands beside the tables of the portfolio. */
    public static Optional<Path> siteFile(InputPaths paths) {
        return paths.site().or(() -> paths.portfolio()
                .map(folder -> Beside.of(folder).resolve(SiteText.FILE))
                .filter(Files::exists));
    }

    /** SHA-256 of the files read, by kind and name. */
    public SortedMap<String, String> checksums(InputPaths paths) {
        SortedMap<String, String> sums = new TreeMap<>();
        try {
            sums.putAll(checksums(paths.climate()));
            Optional<Path> file =
                    siteFile(paths).map(path -> Files.isDirectory(path) ? path.resolve(SiteText.FILE) : path);
            if (file.isPresent()) {
                sums.put("site/" + file.get().getFileName(), Checksum.of(file.get()));
                for (String name : own ? site.orElseThrow().weather() : List.<String>of()) {
                    sums.put(
                            "site/" + name,
                            checksum(
                                    BundledRecord.of(name).isPresent()
                                            ? Path.of(name)
                                            : file.get().resolveSibling(name)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return sums;
    }

    /** Of weather that the command line names. */
    public static SortedMap<String, String> checksums(List<Path> climate) throws IOException {
        SortedMap<String, String> sums = new TreeMap<>();
        for (Path file : climate) {
            sums.put("climate/" + file.getFileName(), checksum(file));
        }
        return sums;
    }

    private static String checksum(Path file) throws IOException {
        Optional<BundledRecord> bundled = BundledRecord.of(file);
        return bundled.isPresent() ? Checksum.of(bundled.get().source()) : Checksum.of(file);
    }
}
