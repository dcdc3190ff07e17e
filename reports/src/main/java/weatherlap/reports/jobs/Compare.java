package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.analysis.choice.Decision;
import weatherlap.analysis.tables.Answer;
import weatherlap.reports.compare.CompareReport;
import weatherlap.reports.output.Content;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.run.Results;
import weatherlap.sim.run.Simulator;

/**
 * The main job: simulates a portfolio under both methods and writes the report.
 *
 * @param threads to simulate with, 1 or more
 */
public record Compare(InputPaths paths, OutputRequest output, int threads) {
    /** @throws BadInput with every problem of the tables, before anything is simulated or written */
    public void run(Messages messages) throws IOException {
        run(Inputs.read(paths), messages);
    }

    void run(Inputs inputs, Messages messages) throws IOException {
        if (inputs.portfolio().houses().isEmpty()) {
            throw new BadInput(List.of("houses.csv: holds no house; there is nothing to compare"));
        }
        inputs.warnings().forEach(warning -> messages.note("warning: " + warning));
        try (OutputFolder folder = output.open(paths.named())) {
            Simulator simulator = inputs.simulator();
            Results results = simulate(inputs, simulator, messages);
            Assumptions assumptions = inputs.assumptions().assumptions();
            CompareReport report = new CompareReport(
                    inputs.name(),
                    results,
                    Answer.of(results),
                    simulator,
                    Decision.of(results, simulator::takeoff, assumptions.scenario()),
                    assumptions,
                    inputs.climate().name(),
                    inputs.warnings(),
                    shown(inputs));
            report.write(folder);
            for (Map.Entry<String, String> text : inputs.assumptions().texts().entrySet()) {
                folder.write(
                        "assumptions/" + text.getKey(),
                        Content.of(text.getValue().getBytes(StandardCharsets.UTF_8)));
            }
            folder.commit(new RunRecord(Version.current(), "compare", settings(inputs), inputs.checksums()));
            report.lines().forEach(messages::result);
        }
        messages.note("the report is in " + output.folder());
    }

    private Results simulate(Inputs inputs, Simulator simulator, Messages messages) {
        try (Messages.Progress progress =
                messages.progress("houses", inputs.portfolio().houses().size())) {
            return simulator.run(inputs.portfolio(), threads, done -> progress.step());
        }
    }

    /** What decides the result beside the input files; threads do not. */
    private static Map<String, Object> settings(Inputs inputs) {
        Scenario scenario = inputs.assumptions().assumptions().scenario();
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("climate", inputs.climate().name());
        settings.put("seed", (long) scenario.value(Scalar.SEED));
        settings.put("draws", scenario.whole(Scalar.DRAWS));
        return settings;
    }

    private static Map<String, String> shown(Inputs inputs) {
        Map<String, String> shown = new LinkedHashMap<>();
        shown.put("program", "weatherlap " + Version.current());
        settings(inputs).forEach((name, value) -> shown.put(name, value.toString()));
        inputs.checksums().forEach((name, sum) -> shown.put(name, "SHA-256 " + sum));
        return shown;
    }
}
