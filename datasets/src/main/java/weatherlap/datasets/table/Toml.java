package weatherlap.datasets.table;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlFactory;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Text in TOML.
 *
 * @param file by which messages call it
 */
public record Toml(String file, String text) {
    /** Its tree; empty where it is none, which is reported. */
    public Optional<JsonNode> tree(Problems problems) {
        if (nestsTooDeeply()) {
            problems.error(file, "has tables within tables deeper than such a file needs");
            return Optional.empty();
        }
        TomlFactory factory = TomlFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(8)
                        .maxNumberLength(60)
                        .maxStringLength(4000)
                        .build())
                .build();
        try {
            return Optional.of(new TomlMapper(factory).readTree(text));
        } catch (JacksonException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
            problems.error(file, line, "", "is not TOML: " + firstLine(e.getOriginalMessage()));
        } catch (ArithmeticException | NumberFormatException e) {
            problems.error(file, "holds a number that is too large or too small: " + firstLine(e.getMessage()));
        }
        return Optional.empty();
    }

    /** A line opens two brackets at most; a parser that recurses is not asked to read hundreds. */
    private boolean nestsTooDeeply() {
        return text.lines()
                .anyMatch(line -> line.chars().filter(c -> c == '[' || c == '{').count() > 50);
    }

    private static String firstLine(String message) {
        return Quoted.of(String.valueOf(message).lines().findFirst().orElse(""));
    }

    /** Physical line on which a name begins a table or an entry; 0 where it does not stand so plainly. */
    public int line(String name) {
        return line(name, 0);
    }

    /** The same, looked for behind a physical line. */
    int line(String name, int behind) {
        Pattern start = Pattern.compile("\\s*\\[?\\s*\"?" + Pattern.quote(name) + "\"?\\s*[\\]=.].*");
        List<String> lines = text.lines().toList();
        for (int i = behind; i < lines.size(); i++) {
            if (lines.get(i).contains(name) && start.matcher(lines.get(i)).matches()) {
                return i + 1;
            }
        }
        return 0;
    }

    /** A basic string of TOML, which holds control characters only by their numbers. */
    public static String quote(String word) {
        StringBuilder quoted = new StringBuilder("\"");
        word.codePoints().forEach(c -> {
            if (Character.isISOControl(c)) {
                quoted.append(String.format(Locale.ROOT, "\\u%04X", c));
            } else {
                quoted.append(c == '"' || c == '\\' ? "\\" : "").appendCodePoint(c);
            }
        });
        return quoted.append('"').toString();
    }
}
