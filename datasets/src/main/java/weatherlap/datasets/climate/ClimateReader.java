package weatherlap.datasets.climate;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Source;

/**
 * Reads weather files, packed with gzip or not, as one record; their format is told by their content, not by their name. Input that cannot
 * be used is a list of errors; input that is doubtful but can be is read, with warnings.
 */
public final class ClimateReader {
    private ClimateReader() {}

    /** A file on disk, or a bundled record by its word. */
    public static Loaded<Climate> read(Path file) {
        return read(List.of(file));
    }

    /** Files on disk, or bundled records by their words, read as one record. */
    public static Loaded<Climate> read(List<Path> files) {
        Problems problems = new Problems();
        List<Source> sources = new ArrayList<>();
        for (Path file : files) {
            BundledRecord.of(file)
                    .map(BundledRecord::source)
                    .or(() -> Folder.file(file, problems))
                    .ifPresent(sources::add);
        }
        return problems.hasErrors() ? Loaded.of(Optional.empty(), problems) : read(sources, problems);
    }

    public static Loaded<Climate> read(Source packed) {
        return read(List.of(packed), new Problems());
    }

    /** @param packed one or more, in any order; their files are of one format */
    public static Loaded<Climate> read(List<Source> packed, Problems problems) {
        List<WeatherFile> files = new ArrayList<>();
        for (Source source : packed) {
            file(TextLines.unpacked(source), problems).ifPresent(files::add);
        }
        Set<ClimateFormat> formats = files.stream()
                .map(WeatherFile::format)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(ClimateFormat.class)));
        if (formats.size() > 1) {
            problems.error(
                    packed.get(0).name(),
                    "cannot be read as one record with the others: they are "
                            + formats.stream().map(ClimateFormat::label).collect(Collectors.joining(" and ")));
        }
        return Loaded.of(problems.hasErrors() ? Optional.empty() : HourGrid.of(files, problems), problems);
    }

    private static Optional<WeatherFile> file(Source source, Problems problems) {
        try {
            String first = TextLines.first(source);
            Optional<ClimateFormat> format = ClimateFormat.of(first);
            if (format.isPresent()) {
                return Optional.of(WeatherFile.read(source, format.get(), new Faults(source.name(), problems)));
            }
            problems.error(
                    source.name(),
                    first.isEmpty()
                            ? "is empty"
                            : "is not a weather file that the program reads (expected: " + expected() + ")");
        } catch (EOFException e) {
            problems.error(source.name(), "cannot be read: it is cut short");
        } catch (IOException e) {
            problems.error(source.name(), "cannot be read: " + e.getMessage());
        }
        return Optional.empty();
    }

    private static String expected() {
        return Arrays.stream(ClimateFormat.values()).map(ClimateFormat::label).collect(Collectors.joining(", "));
    }
}
