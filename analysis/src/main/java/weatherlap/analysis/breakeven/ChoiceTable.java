package weatherlap.analysis.breakeven;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/** {@code choices.csv} and what it says: which method is preferred by each word that a choice may be. */
public final class ChoiceTable {
    public static final Layout<Word> LAYOUT = Layout.<Word>of(
                    "choices.csv", "Choices", "One word that a choice may be.")
            .text("choice", "choice", "what was varied", Word::choice)
            .text("word", "word", "what it was", Word::word)
            .yesNo("in_force", "in force", "whether the assumptions have it so", Word::inForce)
            .number(
                    "difference_usd",
                    "difference",
                    "USD",
                    2,
                    "first less second of the contrast, cost over the years, mean of the houses",
                    Word::differenceUsd)
            .number(
                    "first_cheaper",
                    "first cheaper",
                    "fraction",
                    4,
                    "share of the runs in which the first costs less",
                    Word::firstCheaper)
            .text("preferred", "preferred", "method preferred", word -> word.preferred()
                    .word())
            .build();

    private ChoiceTable() {}

    /**
     * One word of a choice.
     *
     * @param contrast the two set side by side
     * @param differenceUsd first less second, mean over the draws, USD a house
     * @param firstCheaper share of the draws in which the first costs less
     */
    public record Word(
            Contrast contrast, String choice, String word, boolean inForce, double differenceUsd, double firstCheaper) {
        /** @param differencesUsd first less second by draw, USD a house */
        public static Word of(Contrast contrast, String choice, String word, boolean inForce, double[] differencesUsd) {
            return new Word(
                    contrast,
                    choice,
                    word,
                    inForce,
                    Arrays.stream(differencesUsd).average().orElseThrow(),
                    (double) Arrays.stream(differencesUsd)
                                    .filter(usd -> usd < 0)
                                    .count()
                            / differencesUsd.length);
        }

        public Method preferred() {
            return contrast.cheaper(differenceUsd);
        }

        private String told() {
            return String.format(
                    Locale.ROOT,
                    "%s by $%,.0f with %s%s",
                    preferred().label(),
                    Math.abs(differenceUsd),
                    word,
                    inForce ? ", which is in force" : "");
        }
    }

    public static ResultTable of(List<Word> words) {
        return ResultTable.of(LAYOUT, words);
    }

    /** What was found for one choice. */
    public static String words(List<Word> words) {
        boolean turns = words.stream().map(Word::preferred).distinct().count() > 1;
        return words.get(0).choice() + (turns ? " changes" : " does not change") + " the preferred method: "
                + words.stream().map(Word::told).collect(Collectors.joining("; ")) + ".";
    }
}
