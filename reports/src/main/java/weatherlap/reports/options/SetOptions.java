package weatherlap.reports.options;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Changes to the scenario and the wages. */
public final class SetOptions {
    @Option(
            names = "--set",
            paramLabel = "NAME=VALUE",
            description =
                    "Change a setting of scenario.toml (in a workbook, of the sheet Settings), such as crew_size=3, or a wage, such as"
                            + " wage.national.carpenter=30 or burden.national.helper=0.5. Give it as often as you like. The last one counts.")
    private final List<String> changes = new ArrayList<>();

    public List<String> changes() {
        return List.copyOf(changes);
    }
}
