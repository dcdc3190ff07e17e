package weatherlap.datasets.typed;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Words of a list, however they are spelt: capitals, blanks and dashes do not count, and {@code short-forms.csv} has the short forms and other
 * names of the trade (common practice, no source).
 */
public final class ShortForms {
    /** The words that each form may stand for, by the folded form. */
    private static final Map<String, List<String>> FORMS = read();

    private ShortForms() {}

    /** The word of the list that is meant; empty: none is, or more than one might be. */
    public static Optional<String> of(String cell, Collection<String> allowed) {
        if (allowed.contains(cell)) {
            return Optional.of(cell);
        }
        String folded = Typing.folded(cell);
        if (folded.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> same =
                one(allowed.stream().filter(word -> Typing.folded(word).equals(folded)));
        return same.isPresent()
                ? same
                : one(FORMS.getOrDefault(folded, List.of()).stream().filter(allowed::contains));
    }

    private static Optional<String> one(Stream<String> words) {
        List<String> found = words.limit(2).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static Map<String, List<String>> read() {
        Map<String, List<String>> forms = new HashMap<>();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                ShortForms.class.getResourceAsStream("short-forms.csv"), StandardCharsets.UTF_8))) {
            lines.lines().skip(1).map(line -> line.split(",", 2)).forEach(row -> Stream.of(row[1].split("\\|"))
                    .forEach(form -> forms.merge(
                            Typing.folded(form), List.of(row[0]), (a, b) -> Stream.concat(a.stream(), b.stream())
                                    .toList())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Map.copyOf(forms);
    }
}
