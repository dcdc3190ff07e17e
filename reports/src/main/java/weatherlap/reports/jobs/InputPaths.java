package weatherlap.reports.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a user names as input; assumptions and climate that are not named are bundled with the program.
 *
 * @param portfolio folder
 * @param assumptions folder
 * @param climate file
 * @param changes of scalars and choices, each NAME=VALUE, in order
 */
public record InputPaths(
        Path portfolio, Optional<Path> assumptions, Optional<Path> climate, List<String> changes) {
    public InputPaths {
        changes = List.copyOf(changes);
    }

    /** All that are named. */
    public List<Path> named() {
        return Stream.concat(Stream.of(portfolio), Stream.of(assumptions, climate).flatMap(Optional::stream))
                .toList();
    }
}
