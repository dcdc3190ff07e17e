package weatherlap.datasets.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;

class ShopFileTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void good() throws IOException {
        Corpus.SHOP.writeGood(folder);
    }

    private Shop shop() {
        return ShopFile.read(folder).orElseThrow().shop();
    }

    @Test
    void everythingAShopMaySay() {
        Shop shop = shop();
        assertThat(shop.letterhead().name()).contains("Made-up & Daughters <b>Windows</b>");
        assertThat(shop.letterhead().address()).contains("1 Example Street\nDrizzlewick");
        assertThat(shop.terms().tax()).contains(new Terms.Rate("Sales tax", 0.065));
        assertThat(shop.season().crews()).contains(2);
        assertThat(ShopFile.read(folder).orElseThrow().read()).containsOnlyKeys("logo.svg", "shop.toml");
    }

    @Test
    void whatIsLeftOutIsAbsent() throws IOException {
        Files.writeString(folder.resolve("shop.toml"), "");
        assertThat(shop()).isEqualTo(Shop.UNNAMED);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Work: two years. Units: as their maker says. | 2",
                "A full ten-year warranty; glass 20 years | 10 20",
                "Garant\u00eda de dos a\u00f1os, 12 a\u00f1o | 2 12",
                "We mend what leaks, for life. Built since 1962 |",
                "Twenty years of work, Year One |"
            })
    void theYearsThatAWarrantyNames(String words, String years) throws IOException {
        Files.writeString(folder.resolve("shop.toml"), "warranty = \"" + words + "\"\n");
        assertThat(shop().terms().warrantyYears().stream().map(Object::toString).collect(Collectors.joining(" ")))
                .isEqualTo(years == null ? "" : years);
    }

    /** The template says nothing until a line is filled in, and every line of it may be. */
    @Test
    void theTemplateIsAShopOnceItsLinesAreUncommented() throws IOException {
        String template = new String(ShopFile.template(), StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("shop.toml"), template);
        assertThat(shop()).isEqualTo(Shop.UNNAMED);
        Files.writeString(
                folder.resolve("shop.toml"),
                template.replaceAll("(?m)^# (\\[|[a-z_]+ = )", "$1").replace("logo.png", "logo.svg"));
        Shop filled = shop();
        assertThat(filled.letterhead().license()).isPresent();
        assertThat(filled.letterhead().logo()).isPresent();
        assertThat(filled.terms().deposit()).hasValue(0.3);
        assertThat(filled.terms().discount()).isPresent();
        assertThat(filled.season().jobsWaiting()).contains(60);
    }

    /** Worked by hand: 24,337 to the next 50 is 24,350; 3 % is 730.50; 6.5 % of 23,619.50 is 1,535.2675; 30 % of 25,154.77. */
    @Test
    void aPriceToItsLastLine() {
        assertThat(shop().terms().quote(24_337))
                .isEqualTo(new Terms.Quote(24_350, 730.5, 1535.27, 25_154.77, OptionalDouble.of(7546.43)));
        assertThat(Terms.NONE.quote(24_336.6)).isEqualTo(new Terms.Quote(24_337, 0, 0, 24_337, OptionalDouble.empty()));
    }

    @Test
    void anSvgIsWrittenAnewFromWhatIsKnown() {
        Logo.Svg logo = (Logo.Svg) shop().letterhead().logo().orElseThrow();
        assertThat(logo.widthPx()).isEqualTo(400);
        assertThat(logo.heightPx()).isEqualTo(200);
        assertThat(logo.inner())
                .contains("url(#logo-sky)", "id=\"logo-sky\"", "stop-color=\"#88aacc\"", "stroke-width=\"2px\"")
                .doesNotContain("title", "unknown", "style");
    }

    private static byte[] png(int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "png", out);
        return out.toByteArray();
    }

    private static byte[] chunk(String type, byte[] data) {
        ByteBuffer chunk = ByteBuffer.allocate(data.length + 12).putInt(data.length);
        chunk.put(type.getBytes(StandardCharsets.ISO_8859_1)).put(data);
        CRC32 sum = new CRC32();
        sum.update(chunk.array(), 4, data.length + 4);
        return chunk.putInt((int) sum.getValue()).array();
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Arrays.stream(parts).forEach(out::writeBytes);
        return out.toByteArray();
    }

    private List<String> faults(byte[] png) throws IOException {
        Files.write(folder.resolve("logo.svg"), png);
        Loaded<ShopFile> read = ShopFile.read(folder);
        return read.errors().stream().map(Problem::toString).toList();
    }

    @Test
    void ofAPngThePictureIsKeptAndNothingElse() throws IOException {
        byte[] whole = png(30, 20);
        byte[] secret = chunk("tEXt", "Author\0Somebody".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(faults(joined(Arrays.copyOf(whole, 33), secret, Arrays.copyOfRange(whole, 33, whole.length))))
                .isEmpty();
        Logo.Png logo = (Logo.Png) shop().letterhead().logo().orElseThrow();
        assertThat(List.of(logo.widthPx(), logo.heightPx())).containsExactly(30, 20);
        assertThat(Base64.getDecoder().decode(logo.base64())).isEqualTo(whole);
    }

    @Test
    void hostilePngsAreRefused() throws IOException {
        byte[] whole = png(30, 20);
        byte[] header = Arrays.copyOf(whole, 8);
        byte[] rest = Arrays.copyOfRange(whole, 33, whole.length);
        assertThat(faults(joined(header, size(30_000, 30_000), rest)))
                .containsExactly(
                        "logo.svg: has 30000 x 30000 pixels (expected: sides of at most 4000 and at most 4000000"
                                + " pixels)");
        assertThat(faults(joined(header, size(-1, 1), rest))).first().asString().contains("4294967295 x 1");
        assertThat(faults(joined(header, size(0, 0), rest))).first().asString().contains("0 x 0");
        assertThat(faults(joined(header, size(3000, 1300), rest)))
                .containsExactly("logo.svg: is a PNG file whose picture cannot be read");
        assertThat(faults(Arrays.copyOf(whole, whole.length - 9))).containsExactly("logo.svg: is a PNG file cut short");
        byte[] damaged = whole.clone();
        damaged[45] ^= 1;
        assertThat(faults(damaged)).containsExactly("logo.svg: is a PNG file with a damaged part");
        assertThat(faults(joined(header, rest))).first().asString().contains("its size does not come first");
        byte[] endless = ByteBuffer.allocate(8).putInt(Integer.MAX_VALUE).array();
        assertThat(faults(joined(Arrays.copyOf(whole, 33), endless, new byte[20])))
                .containsExactly("logo.svg: is a PNG file cut short");
        assertThat(faults(joined(whole, new byte[1_000_000])))
                .containsExactly("logo.svg: is longer than 1000000 bytes");
    }

    private static byte[] size(int width, int height) {
        return chunk(
                "IHDR",
                ByteBuffer.allocate(13)
                        .putInt(width)
                        .putInt(height)
                        .put(new byte[] {8, 2, 0, 0, 0})
                        .array());
    }
}
