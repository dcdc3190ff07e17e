package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.table.Loaded;
import weatherlap.reports.format.Content;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.reports.output.Warnings;

/**
 * Writes assumption tables out, to edit.
 *
 * @param from their folder; empty: those that come with the program
 * @param changes of scalars and choices, each NAME=VALUE
 */
public record WriteAssumptions(OutputRequest output, Optional<Path> from, List<String> changes) {
    /** @throws BadInput for tables that cannot be read, or a change that cannot be made */
    public void run(Messages messages) throws IOException {
        AssumptionTables tables = tables(messages);
        SortedMap<String, String> sums = from.isPresent() ? Inputs.sums(tables) : new TreeMap<>();
        output.refuseOther(sums);
        try (OutputFolder folder = output.open(List.of())) {
            write(tables, "", folder);
            Map<String, Object> settings = new LinkedHashMap<>();
            settings.put("changes", changes);
            folder.commit(new RunRecord(Version.current(), "assumptions", settings, sums));
        }
        messages.note(tables.texts().size() + " assumption tables are in " + output.folder()
                + "; edit them, then name the folder with --assumptions");
    }

    /**
     * The tables that are written, with the changes made.
     *
     * @throws BadInput for tables that cannot be read, or a change that cannot be made
     */
    public AssumptionTables tables(Messages messages) {
        Loaded<AssumptionTables> read = Inputs.assumptions(from, changes);
        AssumptionTables tables = BadInput.unlessSound(read);
        messages.warn(Warnings.grouped(read.warnings()));
        return tables;
    }

    /**
     * Writes tables as they are into the output of a run.
     *
     * @param path within that output; empty, or with a slash at its end
     */
    public static void write(AssumptionTables tables, String path, OutputFolder folder) throws IOException {
        for (Map.Entry<String, String> text : tables.texts().entrySet()) {
            folder.write(path + text.getKey(), Content.of(text.getValue()));
        }
    }
}
