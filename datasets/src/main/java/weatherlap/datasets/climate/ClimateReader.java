package weatherlap.datasets.climate;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Source;

/**
 * Reads a weather file, packed with gzip or not; its format is told by its content, not by its name. Input that cannot be used is a list
 * of errors; input that is doubtful but can be is read, with warnings.
 */
public final class ClimateReader {
    private ClimateReader() {}

    /** A file on disk. */
    public static Loaded<Climate> read(Path file) {
        Problems problems = new Problems();
        return Folder.file(file, problems)
                .map(source -> read(source, problems))
                .orElseGet(() -> Loaded.of(Optional.empty(), problems));
    }

    public static Loaded<Climate> read(Source packed) {
        return read(packed, new Problems());
    }

    private static Loaded<Climate> read(Source packed, Problems problems) {
        Source source = TextLines.unpacked(packed);
        Optional<Climate> climate = Optional.empty();
        try {
            String first = TextLines.first(source);
            Optional<ClimateFormat> format = ClimateFormat.of(first);
            if (format.isPresent()) {
                climate = read(source, format.get(), problems);
            } else {
                problems.error(
                        source.name(),
                        first.isEmpty() ? "is empty" : "is no weather file known here (expected: " + expected() + ")");
            }
        } catch (EOFException e) {
            problems.error(source.name(), "cannot be read: it is cut short");
        } catch (IOException e) {
            problems.error(source.name(), "cannot be read: " + e.getMessage());
        }
        return Loaded.of(climate, problems);
    }

    private static Optional<Climate> read(Source source, ClimateFormat format, Problems problems) throws IOException {
        Faults faults = new Faults(source.name(), problems);
        List<Reading> readings =
                switch (format) {
                    case HOURLY_CSV -> HourlyCsvFormat.read(source, faults);
                    case EPW -> EpwFormat.read(TextLines.all(source), faults);
                    case ISD_LITE -> IsdLiteFormat.read(TextLines.all(source), faults);
                    case GLOBAL_HOURLY -> GlobalHourlyFormat.read(TextLines.all(source), faults);
                };
        return problems.hasErrors() ? Optional.empty() : HourGrid.of(source.name(), format, faults, readings);
    }

    private static String expected() {
        return String.join(
                ", ",
                java.util.Arrays.stream(ClimateFormat.values())
                        .map(ClimateFormat::label)
                        .toList());
    }
}
