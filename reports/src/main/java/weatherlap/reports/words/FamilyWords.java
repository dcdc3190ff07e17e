package weatherlap.reports.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;

/**
 * The words of a family's sheet in one language: {@code family_LANGUAGE.properties}, messages in the form of {@link MessageFormat} whose
 * arguments are texts.
 */
public final class FamilyWords {
    private final Language language;
    private final Properties messages = new Properties();

    private FamilyWords(Language language) {
        this.language = language;
        String file = "family_" + language.word() + ".properties";
        try (InputStream in = FamilyWords.class.getResourceAsStream(file);
                Reader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            messages.load(text);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " could not be read", e);
        }
    }

    public static FamilyWords in(Language language) {
        return new FamilyWords(language);
    }

    public Language language() {
        return language;
    }

    /**
     * A message, its places filled in their order.
     *
     * @throws IllegalArgumentException for a key that the bundle lacks
     */
    public String of(String key, Object... values) {
        String message = messages.getProperty(key);
        if (message == null) {
            throw new IllegalArgumentException("no words in " + language.word() + " for " + key);
        }
        return values.length == 0 ? message : new MessageFormat(message, Locale.ROOT).format(values);
    }

    /** A number of things: by {@code KEY.one} or {@code KEY.many}, the number in the first place, the values after it. */
    public String count(long number, String key, Object... values) {
        Object[] all = new Object[values.length + 1];
        all[0] = Numbers.plain(number, 0);
        System.arraycopy(values, 0, all, 1, values.length);
        return of(key + (number == 1 ? ".one" : ".many"), all);
    }

    /** What the family calls a constant: by {@code type.constant}. */
    public String name(Enum<?> constant) {
        return name(constant, "");
    }

    /** The same in a form of it: by {@code type.constant.FORM}. */
    public String name(Enum<?> constant, String form) {
        return of((constant.getDeclaringClass().getSimpleName() + '.' + constant.name()).toLowerCase(Locale.ROOT)
                + (form.isEmpty() ? "" : '.' + form));
    }

    public boolean knows(String key) {
        return messages.containsKey(key);
    }

    /** One, two and three. */
    public String list(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : of(and(words.get(last)), String.join(", ", words.subList(0, last)), words.get(last));
    }

    /** Spanish says its "and" otherwise before the sound of an i. */
    private static String and(String next) {
        String start = next.toLowerCase(Locale.ROOT);
        return start.startsWith("i") || start.startsWith("hi") ? "list.and.before_i" : "list.and";
    }

    /** With its first letter as a capital. */
    public static String capital(String text) {
        return InWords.capital(text);
    }

    Set<String> keys() {
        return new TreeSet<>(messages.stringPropertyNames());
    }
}
