package weatherlap.datasets.table;

import java.util.Locale;

/** Text out of a table as a message may show it: in quotes, short, with nothing that moves a cursor. */
public final class Quoted {
    private static final int SHOWN = 40;

    private Quoted() {}

    public static String of(String text) {
        StringBuilder shown = new StringBuilder("\"");
        text.codePoints().limit(SHOWN).forEach(c -> append(shown, c));
        if (text.codePointCount(0, text.length()) > SHOWN) {
            shown.append('…');
        }
        return shown.append('"').toString();
    }

    /** The same without the quotes, for a name that stands where messages put a column. */
    public static String bare(String text) {
        String quoted = of(text);
        return quoted.substring(1, quoted.length() - 1);
    }

    private static void append(StringBuilder shown, int codePoint) {
        int type = Character.getType(codePoint);
        boolean invisible = type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
        if (invisible) {
            shown.append(String.format(Locale.ROOT, "\\u%04x", codePoint));
        } else {
            shown.appendCodePoint(codePoint);
        }
    }
}
