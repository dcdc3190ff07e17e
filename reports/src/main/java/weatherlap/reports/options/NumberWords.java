package weatherlap.reports.options;

import java.util.function.Function;
import picocli.CommandLine.TypeConversionException;

/** Numbers as the command line takes them, and what is said of others. */
public final class NumberWords {
    private NumberWords() {}

    public static int whole(String word) {
        return parsed(word, Integer::valueOf, "whole number");
    }

    public static long large(String word) {
        return parsed(word, Long::valueOf, "whole number");
    }

    public static double number(String word) {
        return parsed(word, Double::valueOf, "number");
    }

    private static <T> T parsed(String word, Function<String, T> parse, String what) {
        try {
            return parse.apply(word);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + word + "' is not a " + what);
        }
    }
}
