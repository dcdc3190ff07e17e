package weatherlap.reports.output;

import java.nio.file.Path;
import java.util.List;

/**
 * The folder that a user wants results in.
 *
 * @param force whether an earlier output there may be replaced
 */
public record OutputRequest(Path folder, boolean force) {
    /**
     * Takes the folder.
     *
     * @param inputs what the run reads; the folder may not hold any of it
     * @throws OutputRefused if the folder cannot or may not be written
     */
    public OutputFolder open(List<Path> inputs) {
        return OutputFolder.open(folder, force, inputs);
    }
}
