package weatherlap.analysis.words;

import java.util.Locale;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseLook;
import weatherlap.sim.run.HouseResult;

/** What is said of leaks at one house. */
public final class LeakWords {
    /** Chances that differ by a point or less are about equal (judgement). */
    private static final double NEGLIGIBLE = 0.01;

    private LeakWords() {}

    /** The two methods side by side. */
    public static String verdict(HouseResult result) {
        Method first = result.contrast().first();
        Method second = result.contrast().second();
        return verdict(
                first, result.first().leakProbability(), second, result.second().leakProbability());
    }

    /**
     * The two methods side by side.
     *
     * @param ofFirst chance of damage over the years looked at, 0 to 1
     * @param ofSecond likewise
     */
    public static String verdict(Method first, double ofFirst, Method second, double ofSecond) {
        if (Math.abs(ofFirst - ofSecond) <= NEGLIGIBLE) {
            return text(
                    "For leaks the two methods are about equal here: %.1f%% with %s, %.1f%% with %s (our judgment).",
                    100 * ofFirst, first.inSentence(), 100 * ofSecond, second.inSentence());
        }
        return ofFirst < ofSecond ? drier(first, ofFirst, second, ofSecond) : drier(second, ofSecond, first, ofFirst);
    }

    private static String drier(Method method, double chance, Method other, double otherChance) {
        return text(
                "%s leaks less here: %.1f%%, against %.1f%% with %s (our judgment).",
                InWords.capital(method.inSentence()), 100 * chance, 100 * otherChance, other.inSentence());
    }

    /** What opening up one window before deciding is worth. */
    public static String look(HouseLook look) {
        if (Math.round(look.value().gainUsd()) == 0) {
            return text(
                    "Opening up one window before deciding costs about $%.0f and would hardly change the choice (our judgment).",
                    look.value().priceUsd());
        }
        return text(
                "Opening up one window before deciding costs about $%.0f and is expected to save about $%.0f, most by showing"
                        + " this: %s. It %s (our judgment).",
                look.value().priceUsd(),
                look.value().gainUsd(),
                InWords.small(look.fault().tradeName()),
                look.value().netUsd() > 0 ? "pays" : "does not pay");
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
