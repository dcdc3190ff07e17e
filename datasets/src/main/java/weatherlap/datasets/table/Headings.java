package weatherlap.datasets.table;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The columns that headings mean: their names, in any capitals, with blanks or dashes for underscores. */
public final class Headings {
    /** Columns whose names begin so are kept and shown on sheets. */
    public static final String NOTE = "note_";

    private static final Pattern BETWEEN = Pattern.compile("[\\s_-]+");

    private final Set<String> names;
    private final Map<String, String> byFolded = new HashMap<>();

    private Headings(List<String> names) {
        this.names = new HashSet<>(names);
        names.forEach(name -> byFolded.put(folded(name), name));
    }

    static Headings of(Schema schema) {
        return new Headings(schema.names());
    }

    /** As names of columns are spelt. */
    public static String folded(String heading) {
        return BETWEEN.matcher(heading.strip().toLowerCase(Locale.ROOT)).replaceAll("_");
    }

    boolean knows(String heading) {
        return names.contains(heading) || byFolded.containsKey(folded(heading));
    }

    /** The name of the column that is meant; that of a note; else the heading as it stands. */
    String name(String heading) {
        if (names.contains(heading)) {
            return heading;
        }
        String folded = folded(heading);
        return byFolded.containsKey(folded) ? byFolded.get(folded) : folded.startsWith(NOTE) ? folded : heading;
    }

    /** The column that was probably meant and misspelt, of those that are not in the header. */
    Optional<String> misspelt(String heading, List<String> header) {
        return Nearest.misspelt(
                heading, names.stream().filter(name -> !header.contains(name)).toList());
    }
}
