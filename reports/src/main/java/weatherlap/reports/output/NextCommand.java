package weatherlap.reports.output;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What to do next, as a line to type. */
public final class NextCommand {
    private NextCommand() {}

    /** Where a page and its printed sheet are. */
    public static String pages(Path folder, String name) {
        return folder + "; open " + folder.resolve(name + ".html") + " or print " + folder.resolve(name + ".pdf");
    }

    /** The command line of these words, of lists each word; what a shell would take for more than letters is in quotes. */
    public static String command(Object... words) {
        return Arrays.stream(words)
                .flatMap(word -> word instanceof List<?> several ? several.stream() : Stream.of(word))
                .map(Object::toString)
                .map(NextCommand::quoted)
                .collect(Collectors.joining(" ", "weatherlap ", ""));
    }

    /** In double quotes, which every shell knows, unless the word holds one of the signs that keep their meaning in them. */
    private static String quoted(String word) {
        if (word.matches("[\\p{L}\\p{N}_./\\\\:=@%+,-]+")) {
            return word;
        }
        return word.matches("[^$`\"!]*") ? '"' + word + '"' : "'" + word.replace("'", "'\\''") + "'";
    }
}
