package weatherlap.datasets.typed;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** One spelling for the many marks that keyboards and spreadsheets put for the same thing. */
final class Typing {
    private static final Pattern VULGAR = Pattern.compile("([¼-¾⅐-⅞])");
    private static final Pattern BLANKS = Pattern.compile("[\\s\\u00a0\\u2007\\u202f]+");

    private Typing() {}

    /** In small letters, with plain dashes, quotes, blanks and fractions: {@code 37½”} is {@code 37 1/2"}. */
    static String plain(String cell) {
        String marked = cell.replace('′', '\'')
                .replace('’', '\'')
                .replace('‘', '\'')
                .replace("″", "\"")
                .replace("”", "\"")
                .replace("“", "\"")
                .replace("''", "\"")
                .replace('–', '-')
                .replace('‐', '-')
                .replace('‑', '-')
                .replace('−', '-');
        String fractions = Normalizer.normalize(VULGAR.matcher(marked).replaceAll(" $1"), Normalizer.Form.NFKC)
                .replace('⁄', '/');
        return BLANKS.matcher(fractions).replaceAll(" ").strip().toLowerCase(Locale.ROOT);
    }

    /** Nothing but letters, digits and question marks: {@code Double-Hung} is {@code doublehung}. */
    static String folded(String word) {
        StringBuilder folded = new StringBuilder();
        word.toLowerCase(Locale.ROOT)
                .codePoints()
                .filter(c -> Character.isLetterOrDigit(c) || c == '?')
                .forEach(folded::appendCodePoint);
        return folded.toString();
    }
}
