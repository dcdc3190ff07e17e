package weatherlap.reports.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Changes to the scenario. */
final class SetOptions {
    @Option(
            names = "--set",
            paramLabel = "NAME=VALUE",
            description =
                    "Change a scalar or choice of scenario.toml, such as crew_size=3. Repeatable; the last one counts.")
    private final List<String> changes = new ArrayList<>();

    List<String> changes() {
        return List.copyOf(changes);
    }
}
