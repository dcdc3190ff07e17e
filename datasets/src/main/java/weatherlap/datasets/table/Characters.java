package weatherlap.datasets.table;

/**
 * Characters that text may hold, wherever it comes from: those of XML 1.0 without the controls, so that every page, picture and workbook
 * can show what a table says.
 *
 * @see "Extensible Markup Language (XML) 1.0, fifth edition, production [2] Char"
 */
public final class Characters {
    /** What stands in the place of a character that may not be shown. */
    private static final char REPLACEMENT = '\uFFFD';

    private Characters() {}

    /** Whether a half of a text may stand in it; halves of pairs are taken to have their other half, as decoded text has. */
    static boolean allowed(char c) {
        return c >= ' ' && c != 0x7F && (c < 0x80 || c > 0x9F) && c < 0xFFFE;
    }

    /** As the tables of Unicode call it: U+FFFE. */
    static String name(char c) {
        return "the character U+%04X".formatted((int) c);
    }

    /** The text with a mark for each character that no page can show, unpaired halves of pairs among them. */
    public static String shown(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(point -> shown.appendCodePoint(isShown(point) ? point : REPLACEMENT));
        return shown.toString();
    }

    private static boolean isShown(int point) {
        return Character.isSupplementaryCodePoint(point)
                || point == '\t'
                || point == '\n'
                || point == '\r'
                || allowed((char) point) && !Character.isSurrogate((char) point);
    }
}
