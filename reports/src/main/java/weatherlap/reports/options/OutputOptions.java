package weatherlap.reports.options;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunFile;
import weatherlap.reports.output.RunRecord;

/** Where results go. */
public final class OutputOptions {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--out",
            converter = AsTyped.class,
            paramLabel = "DIR",
            description =
                    "Folder to write. It is made if it is not there. Required, except for compare (default: report)"
                            + " and for diff, exposure and site, which write nothing without it.")
    private Path folder;

    @Option(
            names = "--force",
            description = "Replace an earlier output in that folder. A folder that holds anything else stays as it is.")
    private boolean force;

    @Option(
            names = "--repeat",
            paramLabel = "FILE",
            description =
                    "Repeat the run of this run.json, and say what comes out different. Name the files that it read; its options are in"
                            + " run.json.")
    private Path repeat;

    private Optional<RunFile> repeats = Optional.empty();
    private OutputRequest requested;

    /** A path as it stands, whatever lies there. */
    static final class AsTyped implements ITypeConverter<Path> {
        @Override
        public Path convert(String value) {
            return Path.of(value);
        }
    }

    /** What the run makes again. */
    void repeats(RunFile run) {
        repeats = Optional.of(run);
    }

    /** The record of the run that was asked for last; empty where it wrote none. */
    Optional<RunFile> written() throws IOException {
        return requested == null
                ? Optional.empty()
                : RunFile.read(requested.folder().resolve(RunRecord.FILE));
    }

    /** The folder, which the user has to name. */
    public OutputRequest request() {
        if (folder == null) {
            throw new ParameterException(spec.commandLine(), "--out DIR is missing: the folder to write");
        }
        return request(folder);
    }

    /** The folder, or one of that name where the user names none. */
    public OutputRequest requestOr(String name) {
        return request(folder == null ? Path.of(name) : folder);
    }

    /** The folder, where the user names one; a run that is made again writes one. */
    public Optional<OutputRequest> requestIfNamed() {
        return folder == null && repeats.isEmpty() ? Optional.empty() : Optional.of(request());
    }

    private OutputRequest request(Path into) {
        requested =
                new OutputRequest(into, force, RunOptions.of(spec.commandLine().getParseResult()), repeats);
        return requested;
    }
}
