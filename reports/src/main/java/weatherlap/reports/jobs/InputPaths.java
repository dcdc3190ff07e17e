package weatherlap.reports.jobs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a user names as input; what is not named is bundled with the program.
 *
 * @param portfolio folder
 * @param assumptions folder
 * @param climate file
 * @param changes of scalars and choices, each NAME=VALUE, in order
 */
public record InputPaths(
        Optional<Path> portfolio, Optional<Path> assumptions, Optional<Path> climate, List<String> changes) {
    public InputPaths {
        changes = List.copyOf(changes);
    }

    /** They as words of a command line. */
    List<Object> words() {
        List<Object> words = new ArrayList<>(portfolio.stream().toList());
        assumptions.ifPresent(folder -> words.addAll(List.of("--assumptions", folder)));
        climate.ifPresent(file -> words.addAll(List.of("--climate", file)));
        changes.forEach(change -> words.addAll(List.of("--set", change)));
        return words;
    }

    /** All that are named. */
    List<Path> named() {
        return Stream.of(portfolio, assumptions, climate)
                .flatMap(Optional::stream)
                .toList();
    }
}
