package weatherlap.reports.format;

import com.ibm.icu.text.Transliterator;
import java.awt.Font;
import java.util.Locale;
import java.util.function.UnaryOperator;
import weatherlap.charts.kit.Fonts;
import weatherlap.datasets.table.Xml;

/**
 * Names as the font of printed sheets can write them: it has Latin, Greek, Cyrillic, Armenian, Georgian, Hebrew and Arabic letters; other
 * scripts are spelt in Latin letters by the rules of the Unicode CLDR, and a sign that has no sound is named in brackets.
 */
public final class Printable {
    private static final String TO_LATIN = "Any-Latin; NFC";
    /** Where a long name may be broken. */
    private static final int MAY_BREAK = 0x200B;

    private Printable() {}

    /** A text that is no markup. */
    public static String of(String text) {
        return of(text, UnaryOperator.identity());
    }

    /** A page of XHTML; what a name brings in stays text in it. */
    static String inPage(String xhtml) {
        return of(xhtml, Xml::escaped);
    }

    private static String of(String text, UnaryOperator<String> written) {
        int foreign = runEnd(text, 0, true);
        if (foreign == text.length()) {
            return text;
        }
        StringBuilder spelt = new StringBuilder(text.length());
        int at = 0;
        while (foreign < text.length()) {
            spelt.append(text, at, foreign);
            at = runEnd(text, foreign, false);
            spelt.append(written.apply(spelt(text.substring(foreign, at))));
            foreign = runEnd(text, at, true);
        }
        return spelt.append(text, at, foreign).toString();
    }

    /** Where the letters from there on end that stay, or else those that are spelt. */
    private static int runEnd(String text, int from, boolean stay) {
        int at = from;
        while (at < text.length()) {
            int c = text.charAt(at) < 0x7F ? text.charAt(at) : text.codePointAt(at);
            if ((isPrintable(c) || c == MAY_BREAK) != stay) {
                return at;
            }
            at += Character.charCount(c);
        }
        return at;
    }

    private static String spelt(String foreign) {
        StringBuilder spelt = new StringBuilder();
        Transliterator.getInstance(TO_LATIN).transliterate(foreign).codePoints().forEach(c -> append(spelt, c));
        return spelt.toString();
    }

    private static void append(StringBuilder spelt, int c) {
        if (isPrintable(c)) {
            spelt.appendCodePoint(c);
        } else if (Character.isLetterOrDigit(c) || Character.getType(c) == Character.OTHER_SYMBOL) {
            String name = Character.getName(c);
            spelt.append('(')
                    .append(name == null ? "\u2013" : name.toLowerCase(Locale.ROOT))
                    .append(')');
        }
    }

    public static boolean isPrintable(String text) {
        return text.codePoints().allMatch(Printable::isPrintable);
    }

    private static boolean isPrintable(int c) {
        return c < 0x7F || Character.isWhitespace(c) || FontOfSheets.FONT.canDisplay(c);
    }

    /** Loaded once the fonts are known. */
    private static final class FontOfSheets {
        private static final Font FONT = font();

        private static Font font() {
            Fonts.install();
            return new Font(Fonts.FAMILY, Font.PLAIN, 12);
        }
    }
}
