package weatherlap.reports.options;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.table.Folder;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.output.RunFile;
import weatherlap.reports.output.Version;

/**
 * A run that is to be made again: the command line that does it, and what came of it.
 *
 * @param arguments the whole command line, with the options of the record
 */
public record Repeat(RunFile run, List<String> arguments) {
    private static final String CALLED = "--called";
    private static final Set<String> PORTFOLIO = Set.of("PORTFOLIO", "--portfolio");

    public Repeat {
        arguments = List.copyOf(arguments);
    }

    /**
     * What a command line asks to be made again, if anything.
     *
     * @throws BadInput if the file is no record of that command, or options are given that the record holds
     */
    public static Optional<Repeat> in(List<String> arguments, CommandLine program) throws IOException {
        CommandLine command =
                arguments.isEmpty() ? null : program.getSubcommands().get(arguments.get(0));
        List<String> own = arguments.subList(Math.min(1, arguments.size()), arguments.size());
        Optional<String> file = file(own);
        if (command == null || file.isEmpty() || command.getCommandSpec().findOption(RunOptions.REPEAT) == null) {
            return Optional.empty();
        }
        Path path = Path.of(file.get());
        RunFile run = recorded(path, arguments.get(0));
        List<String> words = new ArrayList<>(words(run, path, command.getCommandSpec()));
        List<String> twice = RunOptions.heldIn(own, words, command.getCommandSpec());
        if (!twice.isEmpty()) {
            throw new BadInput(List.of("--repeat takes " + String.join(", ", twice) + " from the run; leave out "
                    + (twice.size() == 1 ? "that option" : "those options")));
        }
        String called = run.settings().getOrDefault("portfolio", "");
        boolean named = words.stream().anyMatch(word -> RunOptions.name(word).equals(CALLED));
        if (!called.isEmpty() && !named && command.getCommandSpec().findOption(CALLED) != null) {
            words.add(CALLED + "=" + called);
        }
        List<String> all = new ArrayList<>(arguments.subList(0, 1));
        all.addAll(words);
        all.addAll(own);
        return Optional.of(new Repeat(run, all));
    }

    private static Optional<String> file(List<String> arguments) {
        for (int i = 0; i < arguments.size() && !arguments.get(i).equals("--"); i++) {
            String word = arguments.get(i);
            if (word.startsWith(RunOptions.REPEAT + "=")) {
                return Optional.of(word.substring(RunOptions.REPEAT.length() + 1));
            }
            if (word.equals(RunOptions.REPEAT) && i + 1 < arguments.size()) {
                return Optional.of(arguments.get(i + 1));
            }
        }
        return Optional.empty();
    }

    private static RunFile recorded(Path file, String command) throws IOException {
        String name = String.valueOf(file.getFileName());
        String denied = Folder.denied(file);
        if (!denied.isEmpty()) {
            throw new BadInput(List.of(name + ": " + denied));
        }
        RunFile run = RunFile.read(file)
                .orElseThrow(() -> new BadInput(
                        List.of(name + ": is not a record that this program wrote; name the run.json of a report")));
        String recorded = run.command().split(" ", 2)[0];
        if (!recorded.equals(command)) {
            throw new BadInput(List.of(name + ": records the command " + recorded + ", not " + command));
        }
        return run;
    }

    /** The options of the record; one of an earlier version has none, but compare wrote the tables that hold them. */
    private static List<String> words(RunFile run, Path file, CommandSpec command) {
        String here = String.valueOf(file.toAbsolutePath().normalize().getParent());
        List<String> words = run.options()
                .or(() -> Optional.of(RunFile.OWN_TABLES)
                        .filter(tables -> run.command().equals("compare")))
                .orElseThrow(() -> new BadInput(List.of(
                        file.getFileName() + ": was written by version " + run.version() + ", which kept no options")));
        List<String> foreign = words.stream()
                .map(RunOptions::name)
                .filter(name -> command.findOption(name) == null)
                .toList();
        if (!foreign.isEmpty()) {
            throw new BadInput(List.of(file.getFileName() + ": holds options that are not those of " + command.name()
                    + ": " + String.join(", ", foreign)));
        }
        return words.stream().map(word -> word.replace(RunFile.HERE, here)).toList();
    }

    /**
     * Lets the run know what it repeats.
     *
     * @throws BadInput if houses have to be named that are not
     */
    public void begin(ParseResult parsed) {
        boolean houses = parsed.matchedArgs().stream()
                .anyMatch(arg -> PORTFOLIO.contains(
                        arg.isOption() ? ((CommandLine.Model.OptionSpec) arg).longestName() : arg.paramLabel()));
        if (run.readAny("portfolio") && !houses) {
            throw new BadInput(List.of(run.missing("portfolio")));
        }
        output(parsed).repeats(run);
    }

    /** What is to be known before. */
    public List<String> warnings() {
        return run.version().equals(Version.current())
                ? List.of()
                : List.of("that run was made by version " + run.version() + ", this is " + Version.current());
    }

    /** Says what differs; the exit status. */
    public int told(ParseResult parsed, PrintWriter out) throws IOException {
        RunFile again = output(parsed)
                .written()
                .orElseThrow(() -> new BadInput(List.of("--repeat: the run wrote no folder to compare")));
        List<String> differing = RunFile.differing(again.outputs(), run.outputs());
        differing.forEach(name -> out.println("differs: " + name));
        if (differing.isEmpty()) {
            out.println("the same to the byte: " + Numbers.count(again.outputs().size(), "file", "files"));
        }
        return differing.isEmpty() ? 0 : 1;
    }

    private static OutputOptions output(ParseResult parsed) {
        return parsed.commandSpec().mixins().values().stream()
                .map(CommandSpec::userObject)
                .filter(OutputOptions.class::isInstance)
                .map(OutputOptions.class::cast)
                .findFirst()
                .orElseThrow();
    }
}
