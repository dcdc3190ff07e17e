package weatherlap.reports.output;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The folder that a user wants results in.
 *
 * @param force whether an earlier output there may be replaced
 * @param options what was asked of the run beside where its files lie, a word each, as {@link RunFile} holds them
 * @param repeats the run that this one makes again
 */
public record OutputRequest(Path folder, boolean force, List<String> options, Optional<RunFile> repeats) {
    public OutputRequest {
        options = List.copyOf(options);
    }

    /** Without options, repeating nothing. */
    public OutputRequest(Path folder, boolean force) {
        this(folder, force, List.of(), Optional.empty());
    }

    /** The same with other options in the record: where those that the user gave have gone into files that the run writes. */
    public OutputRequest asked(List<String> instead) {
        return new OutputRequest(folder, force, instead, repeats);
    }

    /**
     * Takes the folder.
     *
     * @param inputs what the run reads; the folder may not hold any of it
     * @throws OutputRefused if the folder cannot or may not be written
     */
    public OutputFolder open(List<Path> inputs) {
        return OutputFolder.open(this, inputs);
    }

    /**
     * Holds what this run read against what the run read that it repeats, if any.
     *
     * @param read SHA-256 by kind and name
     * @throws OutputRefused if they are not the same, with a line for each that is not
     */
    public void refuseOther(Map<String, String> read) {
        List<String> problems = repeats.map(run -> run.otherThan(read)).orElse(List.of());
        if (!problems.isEmpty()) {
            throw new OutputRefused(String.join("\n", problems));
        }
    }
}
