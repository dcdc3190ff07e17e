package weatherlap.reports.format;

import com.openhtmltopdf.bidi.support.ICUBidiReorderer;
import com.openhtmltopdf.bidi.support.ICUBidiSplitter;
import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.io.StringReader;
import java.text.Bidi;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.function.Supplier;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import weatherlap.charts.kit.Fonts;
import weatherlap.datasets.table.Xml;

/**
 * Printed sheets from XHTML with CSS 2.1 and inline SVG. Fonts are the bundled ones, embedded. Nothing is fetched: a page that names a
 * picture, a style sheet or an entity outside itself gets none of them; letters that the fonts lack are spelt as {@link Printable} does; dots that stand in the page are shown. The same page gives the same bytes.
 */
public final class Pdf {
    private static final String[] SCHEMES = {"http", "https", "file", "jar", "ftp"};

    static {
        // a sheet is read by few and kept by fewer: a sixth larger, packed in a quarter of the time
        System.setProperty(Filter.SYSPROP_DEFLATELEVEL, "2");
    }

    private Pdf() {}

    /**
     * The sheet.
     *
     * @param xhtml a well-formed page without a document type
     * @throws IllegalArgumentException at writing, if the page is not well-formed
     */
    public static Content of(String title, String xhtml) {
        return fitting(title, List.of(() -> xhtml), 0, Integer.MAX_VALUE);
    }

    /**
     * Draws a sheet of one word and one line on a thread of its own and drops it, so that the classes and fonts that every sheet needs
     * are there when the page is. What goes wrong is left to the sheet itself to say.
     */
    public static void loadAhead() {
        Content small = of(
                "",
                "<html><body><p>1</p><svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\""
                        + " viewBox=\"0 0 9 9\"><path d=\"M1 1 L8 8\" fill=\"none\" stroke=\"rgb(0,0,0)\"/>"
                        + "<text x=\"1\" y=\"8\">1</text></svg></body></html>");
        Thread ahead = new Thread(() -> {
            try {
                small.writeTo(OutputStream.nullOutputStream());
            } catch (IOException | RuntimeException e) {
                // the sheet itself meets it again
            }
        });
        ahead.setDaemon(true);
        ahead.start();
    }

    /**
     * The roomiest of several layouts of one sheet that keeps to so many pages, or else the tightest. A layout that no other is held
     * against is not asked for.
     *
     * @param layouts one or more, each as for {@link #of}, from the roomiest to the tightest
     * @param likely which of them comes out most often; another one takes longer
     */
    public static Content fitting(String title, List<Supplier<String>> layouts, int likely, int pages) {
        return out -> {
            try (PdfBoxRenderer sheet = new Fitting(layouts, pages).searched(likely)) {
                write(sheet, title, out);
            }
        };
    }

    private static void write(PdfBoxRenderer renderer, String title, OutputStream out) throws IOException {
        renderer.createPDFWithoutClosing();
        try (PDDocument pdf = renderer.getPdfDocument()) {
            fixMarks(pdf, title);
            pdf.save(out);
        }
    }

    static PdfBoxRenderer renderer(String xhtml) throws IOException {
        Fonts.install();
        BundledFonts.install();
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = builder(parsed(xhtml));
        if (Bidi.requiresBidi(xhtml.toCharArray(), 0, xhtml.length())) {
            builder.useUnicodeBidiSplitter(new ICUBidiSplitter.ICUBidiSplitterFactory());
            builder.useUnicodeBidiReorderer(new ICUBidiReorderer());
        }
        return builder.buildPdfRenderer();
    }

    private static PdfRendererBuilder builder(Document page) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        PDDocument sheet = new PDDocument();
        builder.usePDDocument(sheet);
        builder.useFastMode();
        builder.withW3cDocument(page, null);
        builder.useSVGDrawer(new PictureDrawer());
        builder.useUriResolver((base, uri) -> isEmbedded(uri) ? uri : null);
        builder.useExternalResourceAccessControl(
                (uri, type) -> isEmbedded(uri), ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> isEmbedded(uri), ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.useHttpStreamImplementation(uri -> new Nothing());
        builder.useProtocolsStreamImplementation(uri -> new Nothing(), SCHEMES);
        builder.useReplacementText("?");
        builder.withProducer("Weatherlap");
        for (Fonts.Face face : Fonts.Face.values()) {
            builder.useFont(
                    new SheetFont(sheet, face),
                    face.family(),
                    face.weight(),
                    face.oblique() ? FontStyle.ITALIC : FontStyle.NORMAL,
                    true);
        }
        return builder;
    }

    /** A picture that stands in the page itself. */
    private static boolean isEmbedded(String uri) {
        return uri != null && uri.startsWith("data:image/png;base64,");
    }

    /** The title, and a fixed date and identifier in place of the time of day. */
    private static void fixMarks(PDDocument pdf, String title) {
        PDDocumentInformation information = pdf.getDocumentInformation();
        GregorianCalendar date = GregorianCalendar.from(FixedZip.TIME.atZone(ZoneOffset.UTC));
        information.setTitle(title);
        information.setCreationDate(date);
        information.setModificationDate(date);
        pdf.setDocumentId(0L);
    }

    private static Document parsed(String xhtml) throws IOException {
        try {
            return Xml.parsed(new InputSource(new StringReader(xhtml)));
        } catch (SAXException e) {
            throw new IllegalArgumentException("The page is not well-formed: " + e.getMessage(), e);
        }
    }

    /** An empty answer to every request. */
    private static final class Nothing implements FSStream {
        @Override
        public InputStream getStream() {
            return InputStream.nullInputStream();
        }

        @Override
        public Reader getReader() {
            return Reader.nullReader();
        }
    }
}
