package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.inputs.LargePortfolio;
import weatherlap.reports.inputs.ShopReading;
import weatherlap.reports.inputs.Weather;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunFile;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;

/**
 * Makes an earlier comparison again, from its {@code run.json} and the assumptions beside it, and says whether every file came out the same.
 *
 * @param run the file
 * @param inputs portfolio, weather and site that the run read; their assumptions and changes are not looked at
 * @param threads to simulate with, 1 or more
 * @param largestWholeBytes as for {@link Compare}
 */
public record RepeatCompare(Path run, InputPaths inputs, OutputRequest output, int threads, long largestWholeBytes) {
    public RepeatCompare(Path run, InputPaths inputs, OutputRequest output, int threads) {
        this(run, inputs, output, threads, LargePortfolio.LARGEST_WHOLE_BYTES);
    }

    /**
     * Whether every file is the same to the byte; those that are not are named.
     *
     * @throws BadInput if the file is no record of a comparison, or the input is not what that read
     */
    public boolean run(Messages messages) throws IOException {
        RunFile recorded = recorded();
        Path assumptions = run.toAbsolutePath().normalize().resolveSibling("assumptions");
        InputPaths paths = new InputPaths(
                inputs.portfolio(),
                Optional.of(assumptions),
                inputs.climate(),
                inputs.site(),
                inputs.shop(),
                List.of());
        Compare again = new Compare(paths, output, threads, largestWholeBytes);
        Inputs read = again.inputs().named(recorded.settings().getOrDefault("portfolio", ""));
        refuse(RunFile.differing(read.checksums(), recorded.inputs()).stream()
                .map(name -> name + ": is not what the run read")
                .toList());
        if (!recorded.version().equals(Version.current())) {
            messages.note(
                    "warning: the run was made by version " + recorded.version() + ", this is " + Version.current());
        }
        again.run(read, messages);
        RunFile repeated = RunFile.read(output.folder().resolve(RunRecord.FILE)).orElseThrow();
        List<String> differing = RunFile.differing(repeated.outputs(), recorded.outputs());
        differing.forEach(name -> messages.result("differs: " + name));
        if (differing.isEmpty()) {
            messages.result(
                    "the same to the byte: " + Numbers.count(repeated.outputs().size(), "file", "files"));
        }
        return differing.isEmpty();
    }

    private RunFile recorded() throws IOException {
        String name = String.valueOf(run.getFileName());
        RunFile recorded = RunFile.read(run)
                .orElseThrow(() -> new BadInput(
                        List.of(name + ": is not the record of a run of this program; name the run.json of a report")));
        if (!recorded.command().equals("compare")) {
            throw new BadInput(
                    List.of(name + ": records the command " + recorded.command() + "; only compare can be repeated"));
        }
        List<String> problems = new ArrayList<>();
        problems.addAll(mismatch(name, "portfolio", inputs.portfolio().isPresent(), recorded, "name its folder"));
        problems.addAll(mismatch(name, "climate", !inputs.climate().isEmpty(), recorded, "name it with --climate"));
        boolean site = Weather.siteFile(inputs).isPresent();
        problems.addAll(mismatch(name, "site", site, recorded, "name its file with --site"));
        boolean shop = ShopReading.file(inputs).isPresent();
        problems.addAll(mismatch(name, "shop", shop, recorded, "name its file with --shop"));
        refuse(problems);
        return recorded;
    }

    private static List<String> mismatch(String file, String kind, boolean given, RunFile recorded, String remedy) {
        boolean read = recorded.inputs().keySet().stream().anyMatch(input -> input.startsWith(kind + "/"));
        if (read == given) {
            return List.of();
        }
        return List.of(
                read
                        ? file + ": the run read the " + kind + " "
                                + recorded.settings().getOrDefault(kind, "") + "; " + remedy
                        : file + ": the run read the bundled " + kind + "; name none");
    }

    private static void refuse(List<String> problems) {
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
    }
}
