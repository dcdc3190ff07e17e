package weatherlap.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.regex.Pattern;

/** The ear of a tradesman: words that no shop, family or crew should have to read, and a grade that is not passed. */
public final class PlainWords {
    private static final Pattern UNSAID = Pattern.compile(
            "\\b(regrets?|horizon|draws?|held[ -]out|scalars?|limits close|fores(ees?|een|aw)|foretells?|judgements?|labour|moulds?"
                    + "|colours?|else:|lest|whereof|thereof)\\b");

    /** Code, names of files, columns, settings and options, and places to fill in: they keep their names. */
    private static final Pattern NAMES = Pattern.compile(
            "`[^`]*`|\\$\\{[^}]*}|--[a-z-]+(=\\S+)?|\\S*[a-zA-Z0-9*!<>](_|/|\\.(?=[a-z])|=)\\S*|\\b[A-Z]{2,}\\S*");

    private static final Pattern ASIDE = Pattern.compile(" ?\\([^)]*\\)");

    private PlainWords() {}

    /** The words alone, without the names that stand among them. */
    public static String prose(String text) {
        return NAMES.matcher(text).replaceAll("it");
    }

    /** Holds a text to the word list. */
    static void unsaid(String where, String text) {
        assertThat(prose(text).toLowerCase(Locale.ROOT)).as(where).doesNotContainPattern(UNSAID);
    }

    /** Holds a text of a few sentences to the word list and to a grade of Flesch and Kincaid. */
    public static void hold(String text, double grade) {
        unsaid(text, text);
        assertThat(ReadingGrade.of(prose(ASIDE.matcher(text).replaceAll(""))))
                .as(text)
                .isLessThan(grade);
    }
}
