package weatherlap.reports.format;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import weatherlap.charts.kit.TemporaryFolder;

/** An Office Open XML package without the time of day: the same tables give the same bytes. */
public final class FixedZip {
    static final LocalDateTime TIME = LocalDateTime.of(2026, 1, 1, 0, 0);

    private static final String CONTENT_TYPES = "[Content_Types].xml";
    private static final Pattern CREATED = Pattern.compile("(<dcterms:\\w+[^>]*>)[^<]*(</dcterms:)");

    private FixedZip() {}

    /** Copies a package entry by entry, its times set to {@link #TIME}, its entries in order of name after the list of types. */
    public static void copy(byte[] zip, OutputStream out) throws IOException {
        copy(zip, parts -> {}, out);
    }

    /** @param change made to the parts, by name, before they are written */
    static void copy(byte[] zip, Consumer<SortedMap<String, byte[]>> change, OutputStream out) throws IOException {
        SortedMap<String, byte[]> entries = new TreeMap<>();
        Path file = Files.createTempFile(TemporaryFolder.ofProcess(), "package", ".zip");
        try {
            Files.write(file, zip);
            readEntries(file, entries);
        } finally {
            Files.delete(file);
        }
        change.accept(entries);
        entries.computeIfPresent(
                "docProps/core.xml", (name, xml) -> CREATED.matcher(new String(xml, StandardCharsets.UTF_8))
                        .replaceAll("$1" + TIME + ":00Z$2")
                        .getBytes(StandardCharsets.UTF_8));
        ZipOutputStream fixed = new ZipOutputStream(out, StandardCharsets.UTF_8);
        byte[] types = entries.remove(CONTENT_TYPES);
        if (types != null) {
            put(fixed, CONTENT_TYPES, types);
        }
        for (var entry : entries.entrySet()) {
            put(fixed, entry.getKey(), entry.getValue());
        }
        fixed.finish();
    }

    /** By the directory at its end: what stands before the entries of a package written as a stream may hold no sizes. */
    private static void readEntries(Path file, SortedMap<String, byte[]> entries) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                try (InputStream in = zip.getInputStream(entry)) {
                    entries.put(entry.getName(), in.readAllBytes());
                }
            }
        }
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(TIME);
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }
}
