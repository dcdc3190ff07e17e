package weatherlap.reports.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import weatherlap.reports.output.OutputRequest;

/** Where results go. */
final class OutputOptions {
    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "Folder to write; made where it is missing.")
    private Path folder;

    @Option(
            names = "--force",
            description = "Replace an earlier output in that folder. A folder that holds anything else is left alone.")
    private boolean force;

    OutputRequest request() {
        return new OutputRequest(folder, force);
    }
}
