package weatherlap.reports.jobs;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What to do next, as a line to type. */
final class Next {
    private Next() {}

    /** The command line of these words, those with blanks in quotes. */
    static String command(Object... words) {
        return Arrays.stream(words)
                .map(Object::toString)
                .map(word -> word.chars().anyMatch(Character::isWhitespace) ? '"' + word + '"' : word)
                .collect(Collectors.joining(" ", "weatherlap ", ""));
    }
}
