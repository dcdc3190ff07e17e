package weatherlap.reports.format;

import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import weatherlap.charts.kit.Fonts;

/**
 * A bundled face in one sheet, made when the first letter of it is laid out. Its file is read once for all sheets of a run. Letters are not
 * joined to ligatures: they look the same, and words are found as they are spelt.
 */
final class SheetFont extends PDFontSupplier {
    private static final Map<Fonts.Face, TrueTypeFont> READ = new ConcurrentHashMap<>();

    private final PDDocument sheet;
    private final Fonts.Face face;

    SheetFont(PDDocument sheet, Fonts.Face face) {
        super(null);
        this.sheet = sheet;
        this.face = face;
    }

    @Override
    public PDFont supply() {
        try {
            return new KnownLetters(PDType0Font.load(sheet, read(face), true));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The face, which several threads may use at the same time. */
    static TrueTypeFont read(Fonts.Face face) {
        return READ.computeIfAbsent(face, SheetFont::parsed);
    }

    private static TrueTypeFont parsed(Fonts.Face face) {
        try {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(face.bytes()));
            font.setEnableGsub(false);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled font is damaged", e);
        }
    }
}
