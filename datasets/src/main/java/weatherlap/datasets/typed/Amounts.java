package weatherlap.datasets.typed;

import static java.util.Map.entry;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers with what people put around them: {@code $1,250.00}, {@code 30%}, {@code 45 min}. */
public final class Amounts {
    private static final Pattern GROUPED =
            Pattern.compile("([+-]?)(\\d{1,3}(?:([,' ])\\d{3})(?:\\3\\d{3})*)(\\.\\d*)?");
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(?:\\d{1,15}(?:\\.\\d{0,15})?|\\.\\d{1,15})");
    private static final Pattern WITH_WORD = Pattern.compile("([^a-z°%]*?\\d[\\d.,' ]*?) ?([a-z°%][a-z0-9²°%. /-]*)");
    private static final Map<String, Set<String>> WORDS = Map.ofEntries(
            entry("minutes", Set.of("min", "mins", "minute")),
            entry("min", Set.of("mins", "minute", "minutes")),
            entry("person-minutes", Set.of("min", "mins", "minute", "minutes")),
            entry("hours", Set.of("h", "hr", "hrs", "hour")),
            entry("h", Set.of("hr", "hrs", "hour", "hours")),
            entry("years", Set.of("yr", "yrs", "year")),
            entry("people", Set.of("person", "men")),
            entry("lb", Set.of("lbs", "pound", "pounds")),
            entry("square feet", Set.of("ft2", "ft²", "sf", "sq ft", "sq. ft.")),
            entry("ft²", Set.of("ft2", "sf", "sq ft", "sq. ft.")),
            entry("degrees", Set.of("°", "deg", "degree")),
            entry("meters", Set.of("m", "meter")),
            entry("°f", Set.of("f", "deg f", "°")));

    private Amounts() {}

    /** In decimals, as messages show it. */
    public static String shown(double value) {
        NumberFormat format = NumberFormat.getInstance(Locale.ROOT);
        format.setGroupingUsed(false);
        format.setMaximumFractionDigits(9);
        return format.format(value);
    }

    /** The number without separators of thousands; empty: the text is no number. */
    public static Optional<String> number(String cell) {
        String plain = Typing.plain(cell);
        Matcher grouped = GROUPED.matcher(plain);
        if (grouped.matches()) {
            String rest = grouped.group(4) == null ? "" : grouped.group(4);
            return Optional.of(grouped.group(1) + grouped.group(2).replaceAll("[,' ]", "") + rest);
        }
        return DECIMAL.matcher(plain).matches() ? Optional.of(plain) : Optional.empty();
    }

    /** Dollars, with or without their sign; empty: the text is no amount of money. */
    public static Optional<String> dollars(String cell) {
        String plain = Typing.plain(cell);
        if (plain.startsWith("$")) {
            return number(plain.substring(1)).filter(amount -> !amount.startsWith("-") && !amount.startsWith("+"));
        }
        if (plain.startsWith("-$")) {
            return dollars(plain.substring(1)).map(amount -> "-" + amount);
        }
        return number(plain.replaceFirst(" ?(\\$|usd|dollars?)$", ""));
    }

    /** A share: {@code 30%} is 0.3; empty: the text is no number. */
    public static Optional<String> share(String cell) {
        String plain = Typing.plain(cell);
        if (!plain.endsWith("%")) {
            return number(plain);
        }
        return percent(plain)
                .map(number -> new BigDecimal(number).movePointLeft(2).toPlainString());
    }

    /** Percent: {@code 30%} is 30; empty: the text is no number. */
    public static Optional<String> percent(String cell) {
        return number(Typing.plain(cell).replaceFirst(" ?%$", ""));
    }

    /** A number that may be followed by its unit, as the column calls it or for short; empty: the text is none, or of another unit. */
    public static Optional<String> of(String unit, String cell) {
        String plain = Typing.plain(cell);
        Matcher word = WITH_WORD.matcher(plain);
        if (!word.matches()) {
            return number(plain);
        }
        String own = Typing.plain(unit);
        boolean known =
                word.group(2).equals(own) || WORDS.getOrDefault(own, Set.of()).contains(word.group(2));
        return known ? number(word.group(1)) : Optional.empty();
    }
}
