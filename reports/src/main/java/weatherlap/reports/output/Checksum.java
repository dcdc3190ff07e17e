package weatherlap.reports.output;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import weatherlap.datasets.table.Source;

/**
 * SHA-256 as 64 hexadecimal digits.
 *
 * @see "FIPS 180-4, Secure Hash Standard"
 */
public final class Checksum {
    private Checksum() {}

    public static String of(byte[] bytes) {
        return hex(sha256().digest(bytes));
    }

    public static String ofText(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Of one file's bytes. */
    public static String of(Path file) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream in = Files.newInputStream(file);
                OutputStream out = new DigestOutputStream(OutputStream.nullOutputStream(), digest)) {
            in.transferTo(out);
        }
        return hex(digest.digest());
    }

    /** Of the bytes of a source. */
    public static String of(Source source) throws IOException {
        try (InputStream in = source.bytes().open()) {
            return of(in.readAllBytes());
        }
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }

    static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }
}
