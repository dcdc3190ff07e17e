package weatherlap.reports.options;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import weatherlap.reports.output.OutputRequest;

/** Where results go. */
public final class OutputOptions {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--out",
            converter = AsTyped.class,
            paramLabel = "DIR",
            description =
                    "Folder to write; made if it is missing. Required, except for compare (default: report), exposure and site (default:"
                            + " nothing is written).")
    private Path folder;

    @Option(
            names = "--force",
            description = "Replace an earlier output in that folder. A folder that holds anything else is left alone.")
    private boolean force;

    /** A path as it stands, whatever lies there. */
    static final class AsTyped implements ITypeConverter<Path> {
        @Override
        public Path convert(String value) {
            return Path.of(value);
        }
    }

    /** The folder, which the user has to name. */
    public OutputRequest request() {
        if (folder == null) {
            throw new ParameterException(spec.commandLine(), "--out DIR is missing: the folder to write");
        }
        return new OutputRequest(folder, force);
    }

    /** The folder, or one of that name where the user names none. */
    public OutputRequest requestOr(String name) {
        return new OutputRequest(folder == null ? Path.of(name) : folder, force);
    }

    /** The folder, where the user names one. */
    public Optional<OutputRequest> requestIfNamed() {
        return folder == null ? Optional.empty() : Optional.of(new OutputRequest(folder, force));
    }
}
