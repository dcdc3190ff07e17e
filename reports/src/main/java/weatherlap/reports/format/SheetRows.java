package weatherlap.reports.format;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Writes the rows of a sheet straight into its part, which a library of cells would first keep. A cell that does not say where it stands is
 * the next one; after one that is left out all say it, since some readers count those alone that are there.
 *
 * @see "ISO/IEC 29500-1:2016, 18.3.1.4 cell, 18.3.1.40 formula, 18.3.1.53 rich text inline, 18.3.1.73 row, 18.3.1.96 value"
 */
final class SheetRows {
    private final OutputStream out;
    private StringBuilder xml = new StringBuilder();
    private int row;
    private int column;
    private boolean hasGap;

    SheetRows(OutputStream out) {
        this.out = out;
    }

    static void write(String xml, OutputStream out) throws IOException {
        out.write(xml.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Begins a row.
     *
     * @param at from 0
     * @param look its attributes
     */
    void begin(int at, String look) {
        row = at;
        column = 0;
        hasGap = false;
        xml.setLength(0);
        xml.append("<row r=\"").append(at + 1).append('"').append(look).append('>');
    }

    void end() throws IOException {
        String written = xml.append("</row>").toString();
        byte[] bytes = written.getBytes(StandardCharsets.UTF_8);
        out.write(bytes);
        if (bytes.length > written.length()) {
            xml = new StringBuilder(); // one that ever held such letters goes on to keep two bytes for each
        }
    }

    /** The column of the next cell, from 0. */
    int column() {
        return column;
    }

    /** Leaves a cell out. */
    void gap() {
        column++;
        hasGap = true;
    }

    /**
     * Begins a cell, whose text goes on after its style.
     *
     * @param style as an attribute
     */
    StringBuilder cell(String style) {
        xml.append("<c");
        if (hasGap) {
            xml.append(" r=\"").append(CellSheet.cell(row, column)).append('"');
        }
        column++;
        return xml.append(style);
    }

    /** @param text without what XML does not know */
    void text(String style, String text) {
        cell(style).append(" t=\"inlineStr\"><is>");
        xml.append(text.strip().length() < text.length() ? "<t xml:space=\"preserve\">" : "<t>");
        escaped(text);
        xml.append("</t></is></c>");
    }

    /** @param formula that the number has come of; empty for none */
    void number(String style, String formula, String number) {
        cell(style).append('>');
        if (!formula.isEmpty()) {
            xml.append("<f>");
            escaped(formula);
            xml.append("</f>");
        }
        xml.append("<v>").append(number).append("</v></c>");
    }

    private void escaped(String text) {
        int done = 0;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == '&' || letter == '<' || letter == '>') {
                xml.append(text, done, i).append(letter == '&' ? "&amp;" : letter == '<' ? "&lt;" : "&gt;");
                done = i + 1;
            }
        }
        xml.append(text, done, text.length());
    }
}
