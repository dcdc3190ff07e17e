package weatherlap.reports.words;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Flesch-Kincaid grade: 0.39 words/sentences + 11.8 syllables/words − 15.59 (Kincaid, Fishburne, Rogers, Chissom 1975, Navy Research
 * Branch Report 8-75). Syllables are groups of vowels, less a silent e.
 */
public final class ReadingGrade {
    private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z\u2019'-]*");
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    private ReadingGrade() {}

    public static double of(String prose) {
        int sentences = 0;
        int words = 0;
        int syllables = 0;
        for (String sentence : prose.split("[.:;?!]+(\\s|$)")) {
            Matcher found = WORD.matcher(sentence);
            int before = words;
            while (found.find()) {
                words++;
                syllables += syllables(found.group());
            }
            sentences += words > before ? 1 : 0;
        }
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    static int syllables(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        int groups = (int) VOWELS.matcher(plain).results().count();
        boolean silent = plain.endsWith("e") && !plain.endsWith("le") && groups > 1
                || plain.matches(".*[^aeioudt]ed") && groups > 1;
        return Math.max(1, groups - (silent ? 1 : 0));
    }
}
