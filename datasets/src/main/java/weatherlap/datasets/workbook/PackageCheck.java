package weatherlap.datasets.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Whether a file is a workbook that can be read within bounds: what it unpacks to is counted by unpacking it once, whatever its list of
 * contents says.
 *
 * @param fault what keeps it from being read; empty: nothing
 * @param from1904 whether its days count from 1904, which the reader of sheets takes from {@code true} alone
 */
record PackageCheck(String fault, boolean from1904) {
    private static final long MOST_BYTES = 400L << 20;
    private static final long MOST_TEXTS = 64L << 20;
    private static final int MOST_ENTRIES = 10_000;
    private static final int LOOKED_AT = 1 << 20;
    private static final byte[] COMPOUND = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};
    private static final byte[] ZIP = {'P', 'K', 3, 4};
    private static final String SAVE = "; save it as .xlsx";

    private static final String WORKBOOK = "xl/workbook.xml";
    private static final Pattern FROM_1904 = Pattern.compile("date1904=[\"'](1|true|on)[\"']");

    static PackageCheck of(Path file) throws IOException {
        byte[] start;
        try (InputStream in = Files.newInputStream(file)) {
            start = in.readNBytes(LOOKED_AT);
        }
        if (begins(start, COMPOUND)) {
            boolean locked = new String(start, StandardCharsets.UTF_16LE).contains("EncryptedPackage");
            return new PackageCheck(
                    locked
                            ? "is locked by a password; save it without one"
                            : "is a workbook of the old format (.xls)" + SAVE,
                    false);
        }
        if (!begins(start, ZIP)) {
            return new PackageCheck("is not a workbook" + SAVE, false);
        }
        try (ZipFile zip = new ZipFile(file.toFile())) {
            return new PackageCheck(
                    fault(zip), FROM_1904.matcher(beginning(zip, WORKBOOK)).find());
        } catch (ZipException e) {
            return new PackageCheck("is not a whole workbook: " + e.getMessage(), false);
        }
    }

    private static boolean begins(byte[] start, byte[] mark) {
        return start.length >= mark.length && Arrays.equals(start, 0, mark.length, mark, 0, mark.length);
    }

    private static String fault(ZipFile zip) throws IOException {
        if (beginning(zip, "mimetype").contains("opendocument")) {
            return "is a workbook of another format (.ods)" + SAVE;
        }
        if (zip.getEntry("[Content_Types].xml") == null) {
            return "is not a workbook" + SAVE;
        }
        if (beginning(zip, WORKBOOK).contains("purl.oclc.org/ooxml")) {
            return "is in the strict form of its format; save it as an ordinary .xlsx";
        }
        if (zip.size() > MOST_ENTRIES) {
            return "has more than " + MOST_ENTRIES + " parts";
        }
        long all = 0;
        for (ZipEntry entry : Collections.list(zip.entries())) {
            boolean texts = entry.getName().endsWith("sharedStrings.xml");
            long own = unpacked(zip, entry, (texts ? MOST_TEXTS : MOST_BYTES) + 1);
            all += own;
            if (all > MOST_BYTES || texts && own > MOST_TEXTS) {
                return "unpacks to more than " + ((texts ? MOST_TEXTS : MOST_BYTES) >> 20)
                        + " MB; delete empty rows and sheets that are not needed";
            }
        }
        return "";
    }

    /** The first characters of a part; nothing of one that is not there. */
    private static String beginning(ZipFile zip, String part) throws IOException {
        ZipEntry entry = zip.getEntry(part);
        if (entry == null) {
            return "";
        }
        try (InputStream in = zip.getInputStream(entry)) {
            return new String(in.readNBytes(LOOKED_AT), StandardCharsets.UTF_8);
        }
    }

    private static long unpacked(ZipFile zip, ZipEntry entry, long most) throws IOException {
        byte[] buffer = new byte[1 << 16];
        long sum = 0;
        try (InputStream in = zip.getInputStream(entry)) {
            for (int n = in.read(buffer); n >= 0 && sum < most; n = in.read(buffer)) {
                sum += n;
            }
        }
        return sum;
    }
}
