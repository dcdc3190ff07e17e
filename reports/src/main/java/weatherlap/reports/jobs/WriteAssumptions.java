package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.reports.output.Content;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;

/**
 * Writes the bundled assumption tables out, to edit.
 *
 * @param changes of scalars and choices, each NAME=VALUE
 */
public record WriteAssumptions(OutputRequest output, List<String> changes) {
    /** @throws BadInput for a change that cannot be made */
    public void run(Messages messages) throws IOException {
        Loaded<AssumptionTables> loaded = Inputs.assumptions(Optional.empty(), changes);
        if (loaded.value().isEmpty()) {
            throw new BadInput(loaded.errors().stream().map(Problem::toString).toList());
        }
        Map<String, String> texts = loaded.value().orElseThrow().texts();
        try (OutputFolder folder = output.open(List.of())) {
            for (Map.Entry<String, String> text : texts.entrySet()) {
                folder.write(text.getKey(), Content.of(text.getValue().getBytes(StandardCharsets.UTF_8)));
            }
            Map<String, Object> settings = new LinkedHashMap<>();
            settings.put("changes", changes);
            folder.commit(new RunRecord(Version.current(), "assumptions", settings, new TreeMap<>()));
        }
        messages.note(texts.size() + " assumption tables are in " + output.folder()
                + "; edit them and name the folder with --assumptions");
    }
}
