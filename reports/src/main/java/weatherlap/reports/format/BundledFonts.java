package weatherlap.reports.format;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import weatherlap.charts.kit.Fonts;

/**
 * Answers every question for a font that a PDF does not hold with a bundled one. PDFBox would otherwise look through the fonts of the
 * machine and keep what it saw in a file of its own in the user's home, which it trusts the next time.
 */
final class BundledFonts implements FontMapper {
    private static final FontMapper BUNDLED = new BundledFonts();

    private final TrueTypeFont plain = SheetFont.read(Fonts.Face.REGULAR);

    private BundledFonts() {}

    /** From now on no font of the machine is asked for in this process. */
    static void install() {
        FontMappers.set(BUNDLED);
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(plain, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(plain, true);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        return new CIDFontMapping(null, plain, true);
    }
}
