package weatherlap.reports.format;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfTest {
    private static byte[] pdf(String body) {
        return TestTables.bytes(Pdf.of("A title", """
                <html xmlns="http://www.w3.org/1999/xhtml"><head><title>t</title><style>
                @page { size: letter; margin: 20mm } body { font-family: 'DejaVu Sans' }
                .break { page-break-before: always }
                </style></head><body>%s</body></html>""".formatted(body)));
    }

    @Test
    void hasItsPagesItsTextInOrderAndItsFontsEmbedded() throws IOException {
        byte[] bytes = pdf("<h1>First</h1><p>window 12 \u2264 34 ft\u00B2</p><p class='break'>Second</p>");
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("A title");
            assertThat(new PDFTextStripper().getText(pdf))
                    .containsSubsequence("First", "window 12 \u2264 34 ft\u00B2", "Second");
            for (var page : pdf.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    assertThat(font.getName()).contains("DejaVu");
                }
            }
        }
    }

    /** A ligature would be a letter of its own there. */
    @Test
    void wordsAreFoundAsTheyAreSpelt() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(pdf("<p>full-flange, first floor, the office</p>"))) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("full-flange, first floor, the office");
        }
    }

    @Test
    void drawsInlinePictures() throws IOException {
        byte[] with = pdf("<svg xmlns='http://www.w3.org/2000/svg' width='100' height='50' viewBox='0 0 100 50'>"
                + "<rect x='0' y='0' width='100' height='50' fill='#0072b2'/></svg>");
        try (PDDocument pdf = Loader.loadPDF(with)) {
            assertThat(content(pdf)).contains("0 0.4471 0.698 sc");
        }
    }

    /** The drawing operators of the first page and of the pictures in it. */
    private static String content(PDDocument pdf) throws IOException {
        PDPage page = pdf.getPage(0);
        StringBuilder text = new StringBuilder(new String(page.getContents().readAllBytes(), UTF_8));
        for (COSName name : page.getResources().getXObjectNames()) {
            text.append(
                    new String(page.getResources().getXObject(name).getStream().toByteArray(), UTF_8));
        }
        return text.toString();
    }

    @Test
    void theSamePageGivesTheSameBytesAtAnyTimeOfDay() throws IOException {
        byte[] bytes = pdf("<p>one</p>");
        assertThat(pdf("<p>one</p>")).isEqualTo(bytes);
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            PDDocumentInformation marks = pdf.getDocumentInformation();
            assertThat(List.of(marks.getCreationDate(), marks.getModificationDate()))
                    .extracting(
                            date -> date.toInstant().atOffset(ZoneOffset.UTC).toLocalDateTime())
                    .containsOnly(FixedZip.TIME);
        }
    }

    @Test
    void fetchesNothing(@TempDir Path folder) throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="90" height="90"><text>TOP SECRET</text></svg>""");
        AtomicBoolean asked = new AtomicBoolean();
        try (ServerSocket server = new ServerSocket(0)) {
            Thread listener = new Thread(() -> {
                try {
                    server.accept().close();
                    asked.set(true);
                } catch (IOException e) {
                    // closed: nobody came
                }
            });
            listener.start();
            String web = "http://localhost:" + server.getLocalPort() + "/x.svg";
            String file = secret.toUri().toString();
            byte[] bytes = pdf("""
                    <p>shown</p><img src="%1$s" alt=""/><img src="%2$s" alt=""/><link rel="stylesheet" href="%1$s"/>
                    <style>@import url(%1$s); @font-face { font-family: x; src: url(%1$s) } p { background: url(%1$s) }</style>
                    <object data="%2$s"></object><a href="%1$s">link</a>
                    <svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="90" height="90">
                    <image xlink:href="%1$s" width="9" height="9"/><use xlink:href="%2$s#a"/>
                    <script>java.lang.System.exit(9)</script></svg>""".formatted(web, file));
            try (PDDocument pdf = Loader.loadPDF(bytes)) {
                assertThat(new PDFTextStripper().getText(pdf)).contains("shown").doesNotContain("SECRET");
            }
            server.close();
            listener.join();
        }
        assertThat(asked).isFalse();
    }

    @Test
    void entitiesAndBrokenPagesAreRefused() {
        assertThatThrownBy(() -> TestTables.bytes(Pdf.of("t", """
                        <!DOCTYPE html [<!ENTITY x SYSTEM "file:///etc/passwd">]><html><body>&x;</body></html>"""))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> pdf("<p>open")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void hostileTextsComeThroughWhole() throws IOException {
        byte[] bytes = pdf("<p>&lt;script&gt;alert(1)&lt;/script&gt;</p><p>" + "x".repeat(200) + "</p>");
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("<script>alert(1)</script>");
        }
    }
}
