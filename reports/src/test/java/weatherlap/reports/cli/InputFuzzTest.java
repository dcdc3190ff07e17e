package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.datasets.Corpus;

/**
 * Spoilt shop files, logos, sites, scenario files, service calls and workbooks: refused with a message, or taken; never a fault of the
 * program. {@code weatherlap.fuzz} of them over all families (the profile fuzz tries many); now and then what is taken is printed.
 */
class InputFuzzTest {
    private static final int TRIES = Integer.getInteger("weatherlap.fuzz", 150) / Family.values().length;
    private static final long FIRST_SEED = Long.getLong("weatherlap.fuzz.seed", 1);
    private static final int PRINT_EVERY = 200;

    @TempDir
    private static Path folder;

    private enum Family {
        SHOP("shop/shop.toml"),
        LOGO_OF_LINES("shop/logo.svg"),
        LOGO_OF_DOTS("dots/logo.png"),
        SITE("site.toml"),
        SCENARIO("tables/scenario.toml"),
        CALLBACKS("calls/callbacks.csv"),
        WORKBOOK("houses.xlsx");

        private final String file;

        Family(String file) {
            this.file = file;
        }

        byte[] spoilt(byte[] good, long seed) throws IOException {
            return switch (this) {
                case LOGO_OF_DOTS -> spoiltChunk(good, seed);
                case WORKBOOK -> seed % 4 == 0 ? new Mutator(seed).spoil(good) : spoiltPart(good, seed);
                default -> new Mutator(seed).spoil(good);
            };
        }

        List<Object> read() {
            Path houses = folder.resolve("houses");
            return switch (this) {
                case SHOP, LOGO_OF_LINES -> List.of("check", houses, "--shop", folder.resolve("shop"));
                case LOGO_OF_DOTS -> List.of("check", houses, "--shop", folder.resolve("dots"));
                case SITE -> List.of("check", houses, "--site", folder.resolve("site.toml"));
                case SCENARIO -> List.of("check", houses, "--assumptions", folder.resolve("tables"));
                case CALLBACKS -> List.of("callbacks", folder.resolve("calls"), "--out", folder.resolve("out"));
                case WORKBOOK -> List.of("check", folder.resolve("houses.xlsx"));
            };
        }

        /** The same input on paper; for service calls, which are computed at once, nothing more. */
        List<Object> print() {
            List<Object> words = new ArrayList<>(List.of("handout"));
            words.addAll(read().subList(1, read().size()));
            words.addAll(List.of("--house", this == WORKBOOK ? "EXAMPLE" : "H1", "--set", "draws=4"));
            words.addAll(List.of("--out", folder.resolve("out")));
            return words;
        }
    }

    @BeforeAll
    static void writeGoodInput() throws IOException {
        Corpus.PORTFOLIO.writeGood(folder.resolve("houses"));
        Corpus.SHOP.writeGood(folder.resolve("shop"));
        Path dots = Files.createDirectory(folder.resolve("dots"));
        Files.writeString(dots.resolve("shop.toml"), "name = \"Made up\"\nlogo = \"logo.png\"\n");
        ImageIO.write(
                new BufferedImage(40, 30, BufferedImage.TYPE_INT_ARGB),
                "png",
                dots.resolve("logo.png").toFile());
        Files.writeString(folder.resolve("site.toml"), """
                place = "Newark NJ"
                station = "72502014734"
                weather = ["newark"]
                design_wind_mph = 115
                exposure = "B"
                """);
        assertThat(Cli.run("assumptions", "--out", folder.resolve("tables")).status())
                .isZero();
        Corpus.CALLBACKS.writeGood(folder.resolve("calls"));
        assertThat(Cli.run("generate", "--template", "--out", folder.resolve("houses.xlsx"))
                        .status())
                .isZero();
    }

    @ParameterizedTest
    @EnumSource
    void spoiltInputIsRefusedOrTaken(Family family) throws IOException {
        Path file = folder.resolve(family.file);
        byte[] good = Files.readAllBytes(file);
        assertThat(Cli.run(family.read().toArray()).status()).as("as it was").isZero();
        delete(folder.resolve("out"));
        int taken = 0;
        for (int i = 0; i < TRIES; i++) {
            String what = family + ", seed " + (FIRST_SEED + i);
            Files.write(file, family.spoilt(good, FIRST_SEED + i));
            if (isTaken(Cli.run(family.read().toArray()), what)) {
                delete(folder.resolve("out"));
                if (taken++ % PRINT_EVERY == 0 && family != Family.CALLBACKS) {
                    isTaken(Cli.run(family.print().toArray()), what + ", printed");
                    delete(folder.resolve("out"));
                }
            }
        }
        Files.write(file, good);
        System.out.printf("%s: %d tried, %d taken, %d refused%n", family, TRIES, taken, TRIES - taken);
        assertThat(taken).as(family + " that is still good").isLessThan(TRIES);
    }

    private static boolean isTaken(Cli cli, String what) {
        assertThat(cli.status()).as(what + ": " + cli.err()).isIn(0, 2);
        assertThat(cli.err()).as(what).doesNotContain("\tat ", "a fault of the program", "out of memory", "Exception");
        if (cli.status() == 2) {
            assertThat(cli.notes()).as(what).isNotEmpty().allMatch(line -> !line.isBlank());
            assertThat(folder.resolve("out")).as(what).doesNotExist();
        }
        return cli.status() == 0;
    }

    /** A part of the picture spoilt, and its check sum mended as often as not, so that more than the sum is looked at. */
    private static byte[] spoiltChunk(byte[] good, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        if (random.nextInt(4) == 0) {
            return new Mutator(seed).spoil(good);
        }
        byte[] bytes = good.clone();
        int at = 8;
        for (int skip = random.nextInt(3); skip > 0 && at + 12 + length(bytes, at) < bytes.length; skip--) {
            at += 12 + length(bytes, at);
        }
        int length = length(bytes, at);
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            bytes[at + 4 + random.nextInt(length + 4)] = (byte) random.nextInt(256);
        }
        CRC32 sum = new CRC32();
        sum.update(bytes, at + 4, length + 4);
        for (int i = 0; i < 4; i++) {
            bytes[at + 8 + length + i] = (byte) (sum.getValue() >>> 8 * (3 - i));
        }
        return bytes;
    }

    private static int length(byte[] png, int at) {
        return (png[at + 2] & 255) << 8 | png[at + 3] & 255;
    }

    /** One part of the package spoilt, the package itself sound. */
    private static byte[] spoiltPart(byte[] good, long seed) throws IOException {
        List<String> names = new ArrayList<>();
        List<byte[]> parts = new ArrayList<>();
        try (ZipInputStream in = new ZipInputStream(new java.io.ByteArrayInputStream(good))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                names.add(entry.getName());
                parts.add(in.readAllBytes());
            }
        }
        int at = new SplittableRandom(seed).nextInt(parts.size());
        parts.set(at, new Mutator(seed).spoil(spread(parts.get(at))));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (int i = 0; i < parts.size(); i++) {
                out.putNextEntry(new ZipEntry(names.get(i)));
                out.write(parts.get(i));
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    /** A line an element, so that what spoils lines and cells spoils elements and values. */
    private static byte[] spread(byte[] xml) {
        return new String(xml, StandardCharsets.UTF_8).replace("><", ">\n<").getBytes(StandardCharsets.UTF_8);
    }

    private static void delete(Path whole) throws IOException {
        if (Files.exists(whole)) {
            try (Stream<Path> all = Files.walk(whole)) {
                for (Path path : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
