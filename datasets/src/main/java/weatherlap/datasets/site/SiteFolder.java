package weatherlap.datasets.site;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weatherlap.datasets.climate.BundledRecord;
import weatherlap.datasets.climate.Climate;
import weatherlap.datasets.climate.ClimateFormat;
import weatherlap.datasets.climate.ClimateReader;
import weatherlap.datasets.climate.Location;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.Toml;

/**
 * A site file and the folder that its weather files are looked for from.
 *
 * @param file name of the site file in it
 */
public record SiteFolder(Folder folder, String file, Site site) {
    /** Weather from further away is not that of the place: the distance to the next station in the emptiest parts of the country; judgement. */
    private static final double FARTHEST_MILES = 150;

    private static final int LONGEST = 1_000_000;
    private static final Pattern YEAR = Pattern.compile(".*\\b(\\d{4})\\.csv");

    /** @param path a site file, or a folder that holds {@value SiteText#FILE} */
    public static Loaded<SiteFolder> read(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        Path file = Files.isDirectory(whole) ? whole.resolve(SiteText.FILE) : whole;
        return read(Folder.of(file.getParent()), file.getFileName().toString());
    }

    static Loaded<SiteFolder> read(Folder folder, String file) {
        Problems problems = new Problems();
        Optional<SiteFolder> read = folder.find(file, problems)
                .flatMap(source -> source.text(LONGEST, problems))
                .flatMap(text -> SiteText.read(new Toml(file, text), problems))
                .map(site -> new SiteFolder(folder, file, site));
        return Loaded.of(read, problems);
    }

    /**
     * The weather that the site names, as one record in the local standard time of its place. To be asked only where it names some.
     */
    public Loaded<Climate> weather() {
        Problems problems = new Problems();
        List<Source> sources = new ArrayList<>();
        site.weather().forEach(name -> source(name, problems).ifPresent(sources::add));
        if (problems.hasErrors()) {
            return Loaded.of(Optional.empty(), problems);
        }
        Loaded<Climate> read = ClimateReader.read(sources, problems);
        if (read.value().isEmpty()) {
            return read;
        }
        Climate climate = read.value().orElseThrow();
        List<Location> measured = new ArrayList<>(climate.measuredAt());
        site.weather().forEach(name -> BundledRecord.of(name).ifPresent(record -> measured.add(record.location())));
        site.location().ifPresent(place -> measured.forEach(at -> checkNear(place, at, problems)));
        return Loaded.of(Optional.of(inLocalTime(climate)), problems);
    }

    private Optional<Source> source(String name, Problems problems) {
        Optional<BundledRecord> bundled = BundledRecord.of(name);
        if (bundled.isPresent()) {
            return bundled.map(BundledRecord::source);
        }
        Problems own = new Problems();
        Optional<Source> found = folder.find(name, own);
        for (Problem problem : own.errors()) {
            problems.error(problem.file(), problem.message() + address(name));
        }
        return found;
    }

    /** Where to get a file that is not there. */
    private String address(String name) {
        Matcher year = YEAR.matcher(name);
        return site.station().isPresent() && year.matches()
                ? "; download it from " + site.station().get().address(Integer.parseInt(year.group(1)))
                : "";
    }

    private void checkNear(Location place, Location measured, Problems problems) {
        double miles = place.milesTo(measured);
        if (miles > FARTHEST_MILES) {
            problems.error(
                    file,
                    String.format(
                            Locale.ROOT,
                            "the weather was measured at %.2f,%.2f, %.0f miles from %s at %.2f,%.2f: no more than %.0f count as its own",
                            measured.latitudeDeg(),
                            measured.longitudeDeg(),
                            miles,
                            site.place(),
                            place.latitudeDeg(),
                            place.longitudeDeg(),
                            FARTHEST_MILES));
        }
    }

    private Climate inLocalTime(Climate climate) {
        ClimateFormat format = climate.report().format();
        int ahead = format.isUtc()
                ? site.location()
                        .or(() -> climate.measuredAt().stream().findFirst())
                        .map(Location::hoursAheadOfUtc)
                        .orElse(0)
                : 0;
        return new Climate(climate.weather().shifted(ahead), climate.report(), climate.measuredAt());
    }
}
