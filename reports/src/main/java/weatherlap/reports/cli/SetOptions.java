package weatherlap.reports.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Option;

/** Changes to the scenario. */
final class SetOptions {
    @Option(
            names = "--set",
            paramLabel = "NAME=VALUE",
            description = "Change a scalar or choice of scenario.toml, such as crew_size=3. Repeatable.")
    private final Map<String, String> changes = new LinkedHashMap<>();

    Map<String, String> changes() {
        return changes;
    }
}
