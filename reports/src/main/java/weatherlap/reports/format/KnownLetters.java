package weatherlap.reports.format;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.util.BoundingBox;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A font that keeps the code and the width of each letter it was asked for. Where lines break is found by measuring words, and PDFBox goes
 * through a stream of bytes and the table of codes for every letter of them.
 */
final class KnownLetters extends PDFont {
    private record Letter(byte[] code, float width) {}

    private final PDType0Font font;
    private final Map<Integer, Letter> known = new HashMap<>();

    KnownLetters(PDType0Font font) throws IOException {
        super(font.getCOSObject());
        this.font = font;
    }

    /** @throws IllegalArgumentException if the font has no such letter */
    private Letter letter(int c) throws IOException {
        Letter letter = known.get(c);
        if (letter == null) {
            String text = Character.toString(c);
            letter = new Letter(font.encode(text), font.getStringWidth(text));
            known.put(c, letter);
        }
        return letter;
    }

    @Override
    public float getStringWidth(String text) throws IOException {
        float width = 0;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            width += letter(c).width();
            i += Character.charCount(c);
        }
        return width;
    }

    @Override
    protected byte[] encode(int c) throws IOException {
        return letter(c).code();
    }

    @Override
    public void addToSubset(int c) {
        font.addToSubset(c);
    }

    @Override
    public boolean willBeSubset() {
        return font.willBeSubset();
    }

    @Override
    public void subset() throws IOException {
        font.subset();
    }

    /** Asked for while the font is being made, too. */
    @Override
    public String getName() {
        return getCOSObject().getNameAsString(COSName.BASE_FONT);
    }

    @Override
    public PDFontDescriptor getFontDescriptor() {
        return font.getFontDescriptor();
    }

    @Override
    public BoundingBox getBoundingBox() throws IOException {
        return font.getBoundingBox();
    }

    @Override
    public int readCode(InputStream in) throws IOException {
        return font.readCode(in);
    }

    @Override
    public float getHeight(int code) throws IOException {
        return font.getHeight(code);
    }

    @Override
    public float getWidth(int code) throws IOException {
        return font.getWidth(code);
    }

    @Override
    public float getWidthFromFont(int code) throws IOException {
        return font.getWidthFromFont(code);
    }

    @Override
    public boolean hasExplicitWidth(int code) throws IOException {
        return font.hasExplicitWidth(code);
    }

    @Override
    protected float getStandard14Width(int code) {
        throw new UnsupportedOperationException("none of the fonts of every reader");
    }

    @Override
    public boolean isVertical() {
        return font.isVertical();
    }

    @Override
    public boolean isEmbedded() {
        return font.isEmbedded();
    }

    @Override
    public boolean isDamaged() {
        return font.isDamaged();
    }
}
