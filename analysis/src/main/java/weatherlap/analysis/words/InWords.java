package weatherlap.analysis.words;

import java.util.List;
import java.util.Locale;

/** Names and lists as people write them, in pictures and on pages. */
public final class InWords {
    private InWords() {}

    /** A constant: VINYL_SIDING gives vinyl siding. */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** With its first letter as a capital. */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** With its first letter small, to stand within a sentence. */
    public static String small(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    /** One, two and three. */
    public static String list(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
