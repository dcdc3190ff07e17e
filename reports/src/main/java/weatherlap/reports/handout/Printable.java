package weatherlap.reports.handout;

import com.ibm.icu.text.Transliterator;
import java.awt.Font;
import java.util.Locale;
import java.util.stream.Stream;
import weatherlap.charts.kit.Fonts;
import weatherlap.reports.words.FamilyWords;
import weatherlap.sim.house.House;

/**
 * Names as the font of printed sheets can write them: it has Latin, Greek, Cyrillic, Armenian, Georgian, Hebrew and Arabic letters; other
 * scripts are spelt in Latin letters by the rules of the Unicode CLDR, and a sign that has no sound is named in brackets.
 */
final class Printable {
    private static final String TO_LATIN = "Any-Latin; NFC";

    private Printable() {}

    static String of(String text) {
        StringBuilder spelt = new StringBuilder();
        StringBuilder foreign = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (isPrintable(c)) {
                spell(foreign, spelt);
                spelt.appendCodePoint(c);
            } else {
                foreign.appendCodePoint(c);
            }
        });
        spell(foreign, spelt);
        return spelt.toString();
    }

    /** Moves a run of letters that the font lacks to where it is spelt. */
    private static void spell(StringBuilder foreign, StringBuilder spelt) {
        if (foreign.length() > 0) {
            Transliterator.getInstance(TO_LATIN)
                    .transliterate(foreign.toString())
                    .codePoints()
                    .forEach(c -> append(spelt, c));
            foreign.setLength(0);
        }
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

    /** A sentence where names of a house are spelt otherwise on paper than on the page; else empty. */
    static String note(House house, FamilyWords words) {
        boolean all = Stream.of(
                        Stream.of(house.label()),
                        house.elevations().stream().map(wall -> wall.id()),
                        house.openings().map(opening -> opening.id()))
                .flatMap(names -> names)
                .allMatch(Printable::isPrintable);
        return all ? "" : words.of("spelt");
    }

    private static boolean isPrintable(String text) {
        return text.codePoints().allMatch(Printable::isPrintable);
    }

    private static boolean isPrintable(int c) {
        return Character.isWhitespace(c) || FontOfSheets.FONT.canDisplay(c);
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
