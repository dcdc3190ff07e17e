package weatherlap.reports.format;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.Comparator;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import weatherlap.charts.kit.TemporaryFolder;

/** An Office Open XML package without the time of day: the same tables give the same bytes. */
public final class FixedZip {
    static final LocalDateTime TIME = LocalDateTime.of(2026, 1, 1, 0, 0);

    private static final Comparator<String> TYPES_FIRST = Comparator.comparing(
                    (String name) -> !name.equals("[Content_Types].xml"))
            .thenComparing(Comparator.naturalOrder());
    private static final int BUFFER = 1 << 16;
    /** Packs a seventh worse than the usual 6 in less than half the time. */
    private static final int LEVEL = 3;

    private static final Pattern CREATED = Pattern.compile("(<dcterms:\\w+[^>]*>)[^<]*(</dcterms:)");

    private FixedZip() {}

    /**
     * Copies a package part by part, its times set to {@link #TIME}, its parts in order of name after the list of types.
     *
     * @param zip writes the package; best without packing, which is done here
     */
    public static void copy(Content zip, OutputStream out) throws IOException {
        copy(zip, parts -> {}, out);
    }

    /** An empty workbook to be copied: it packs nothing itself. */
    public static Workbook workbook(OutputStream zip) {
        Workbook workbook = new Workbook(zip, "Weatherlap", "1.0");
        workbook.setCompressionLevel(Deflater.NO_COMPRESSION);
        return workbook;
    }

    /** @param change made to the parts, by name, before they are written */
    static void copy(Content zip, Consumer<SortedMap<String, Content>> change, OutputStream out) throws IOException {
        Path file = Files.createTempFile(TemporaryFolder.ofProcess(), "package", ".zip");
        try {
            try (OutputStream whole = new BufferedOutputStream(Files.newOutputStream(file), BUFFER)) {
                zip.writeTo(whole);
            }
            try (ZipFile parts = new ZipFile(file.toFile())) {
                write(changed(parts, change), out);
            }
        } finally {
            Files.delete(file);
        }
    }

    /** By the directory at its end: what stands before the parts of a package written as a stream may hold no sizes. */
    private static SortedMap<String, Content> changed(ZipFile zip, Consumer<SortedMap<String, Content>> change) {
        SortedMap<String, Content> parts = new TreeMap<>(TYPES_FIRST);
        for (ZipEntry entry : Collections.list(zip.entries())) {
            parts.put(entry.getName(), out -> {
                try (InputStream in = zip.getInputStream(entry)) {
                    in.transferTo(out);
                }
            });
        }
        change.accept(parts);
        parts.computeIfPresent(
                "docProps/core.xml",
                (name, part) -> part.changed(xml -> CREATED.matcher(xml).replaceAll("$1" + TIME + ":00Z$2")));
        return parts;
    }

    private static void write(SortedMap<String, Content> parts, OutputStream out) throws IOException {
        ZipOutputStream zip = new FewWrites(out);
        for (var part : parts.entrySet()) {
            ZipEntry entry = new ZipEntry(part.getKey());
            entry.setTimeLocal(TIME);
            zip.putNextEntry(entry);
            part.getValue().writeTo(zip);
            zip.closeEntry();
        }
        zip.finish();
    }

    /** Hands packed bytes on by the buffer, and not half a kilobyte at a time. */
    private static final class FewWrites extends ZipOutputStream {
        FewWrites(OutputStream out) {
            super(out, StandardCharsets.UTF_8);
            setLevel(LEVEL);
            buf = new byte[BUFFER];
        }
    }
}
