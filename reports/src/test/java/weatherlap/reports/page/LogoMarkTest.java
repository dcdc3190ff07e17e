package weatherlap.reports.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.shop.Logo;
import weatherlap.datasets.shop.ShopFile;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.Pdf;

/** Logos as a printed sheet shows them: the dots of the sheet are looked at. */
class LogoMarkTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void good() throws IOException {
        Corpus.SHOP.writeGood(folder);
    }

    private Logo logo() {
        return ShopFile.read(folder).orElseThrow().shop().letterhead().logo().orElseThrow();
    }

    /** The dot in the middle of the mark on a sheet of its own. */
    private Color middle(String mark) throws IOException {
        Content sheet = Pdf.of(
                "t",
                "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>t</title><style>@page { size: 2in 2in; margin: 0 }"
                        + " body { margin: 0 }</style></head><body><div>" + mark + "</div></body></html>");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        sheet.writeTo(bytes);
        try (PDDocument pdf = Loader.loadPDF(bytes.toByteArray())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            BufferedImage dots = new PDFRenderer(pdf).renderImage(0);
            return new Color(dots.getRGB(30, 20));
        }
    }

    @Test
    void linesAndAreas() throws IOException {
        Files.writeString(
                folder.resolve("logo.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 10 5'><rect width='10' height='5' fill='#336699'/></svg>");
        String mark = LogoMark.of(logo(), 100, 100, "Made-up & \"Daughters\" <b>");
        assertThat(mark)
                .contains("width=\"100\" height=\"50\"")
                .contains("aria-label=\"Made-up &amp; &quot;Daughters&quot; &lt;b>\"");
        assertThat(middle(mark)).isEqualTo(new Color(0x336699));
    }

    @Test
    void gradientsAndTransformations() throws IOException {
        Color middle = middle(LogoMark.of(logo(), 100, 100, "x"));
        assertThat(middle.getBlue()).isBetween(0x66, 0xcc).isGreaterThan(middle.getRed());
    }

    @Test
    void dots() throws IOException {
        BufferedImage picture = new BufferedImage(20, 10, BufferedImage.TYPE_INT_RGB);
        picture.createGraphics().fillRect(0, 0, 20, 10);
        for (int x = 0; x < 200; x++) {
            picture.setRGB(x % 20, x / 20, 0xCC2200);
        }
        ImageIO.write(picture, "png", folder.resolve("logo.svg").toFile());
        assertThat(middle(LogoMark.of(logo(), 100, 100, "x"))).isEqualTo(new Color(0xCC2200));
    }
}
