package weatherlap.reports.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.Spec;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.options.NumberWords;
import weatherlap.reports.options.Repeat;
import weatherlap.reports.workbook.InputWorkbooks;
import weatherlap.sim.many.Ahead;

/** The command line {@code weatherlap}: picks the command named by the first argument and runs it. */
@Command(
        name = "weatherlap",
        mixinStandardHelpOptions = true,
        versionProvider = Weatherlap.VersionLine.class,
        description = "Compares three ways to replace the windows of a house: full-flange, full-frame and insert.",
        footer = {
            "",
            "Examples:",
            "  weatherlap compare --out report",
            "  weatherlap generate --template --out my-houses",
            "  weatherlap compare --help"
        },
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:done", "1:" + Failures.BROKE, "2:a mistake in the command or in what it read"})
public final class Weatherlap implements Runnable {
    private static final List<Class<?>> COMMANDS = List.of(
            CompareCommand.class,
            GenerateCommand.class,
            CheckCommand.class,
            ExplainCommand.class,
            HandoutCommand.class,
            CrewsheetCommand.class,
            AssumptionsCommand.class,
            CalibrateCommand.class,
            CallbacksCommand.class,
            BacktestCommand.class,
            SiteCommand.class,
            ExposureCommand.class,
            BreakevenCommand.class,
            DriversCommand.class,
            DiffCommand.class,
            CompletionCommand.class);

    /** Those that print sheets, for which all tables that come with the program are read. */
    private static final List<Class<?>> PRINTING =
            List.of(CompareCommand.class, HandoutCommand.class, CrewsheetCommand.class);

    @Spec
    private CommandSpec spec;

    private Weatherlap() {}

    /** Runs the command line; the exit status. */
    public static int run(String[] arguments, PrintWriter out, PrintWriter err) {
        try (InputWorkbooks workbooks = new InputWorkbooks()) {
            return run(arguments, new SaidWriter(out, workbooks), new SaidWriter(err, workbooks), workbooks);
        }
    }

    private static int run(String[] arguments, PrintWriter out, PrintWriter err, InputWorkbooks workbooks) {
        if (arguments.length > 0 && PRINTING.stream().anyMatch(type -> isOf(type, arguments[0]))) {
            Ahead.of(AssumptionTables::bundled); // read by the time that the command line is
        }
        CommandLine commandLine =
                commandLine(List.of(arguments)).registerConverter(Path.class, new Read<>(workbooks::folder));
        commandLine.setOut(out);
        commandLine.setErr(err);
        commandLine.setParameterExceptionHandler(Failures::badUsage);
        commandLine.setExecutionExceptionHandler((failure, command, parsed) -> Failures.report(failure, err));
        commandLine.setUsageHelpAutoWidth(false);
        commandLine.setUsageHelpWidth(100);
        try {
            Optional<Repeat> repeat = Repeat.in(List.of(arguments), commandLine);
            commandLine.setExecutionStrategy(parsed -> executed(parsed, repeat, workbooks, err));
            return commandLine.execute(repeat.map(again -> again.arguments().toArray(String[]::new))
                    .orElse(arguments));
        } catch (BadInput | IOException | Error failure) {
            return Failures.report(failure, err);
        } finally {
            out.flush();
            err.flush();
        }
    }

    private static int executed(
            ParseResult parsed, Optional<Repeat> repeat, InputWorkbooks workbooks, PrintWriter err) {
        if (!workbooks.problems().isEmpty()) {
            return Failures.report(new BadInput(workbooks.problems()), err);
        }
        workbooks.warnings().forEach(warning -> err.println("warning: " + warning));
        return repeat.map(again -> again(again, parsed, err)).orElseGet(() -> new RunLast().execute(parsed));
    }

    private static int again(Repeat repeat, ParseResult parsed, PrintWriter err) {
        ParseResult command = parsed.subcommand();
        try {
            repeat.warnings().forEach(warning -> err.println("warning: " + warning));
            repeat.begin(command);
            new RunLast().execute(parsed);
            return repeat.told(command, parsed.commandSpec().commandLine().getOut());
        } catch (BadInput | IOException failure) {
            return Failures.report(failure, err);
        }
    }

    /** All commands, ready to parse. */
    static CommandLine commandLine() {
        return commandLine(List.of(CompletionCommand.NAME));
    }

    /**
     * Commands, ready to parse: the one that the arguments begin with, alone; else those that they name, and of the others what a list of
     * commands shows, since reading all their options takes a tenth of a short run.
     */
    static CommandLine commandLine(List<String> arguments) {
        CommandLine all = new CommandLine(new Weatherlap());
        List<Class<?>> begun = COMMANDS.stream()
                .filter(type -> !arguments.isEmpty() && isOf(type, arguments.get(0)))
                .toList();
        for (Class<?> type : begun.isEmpty() ? COMMANDS : begun) {
            Command command = type.getAnnotation(Command.class);
            boolean isNamed = arguments.contains(command.name()) || arguments.contains(CompletionCommand.NAME);
            all.addSubcommand(command.name(), isNamed ? new CommandLine(type) : listed(command));
        }
        return all.setExpandAtFiles(false)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .registerConverter(Integer.class, new Read<>(NumberWords::whole))
                .registerConverter(int.class, new Read<>(NumberWords::whole))
                .registerConverter(Long.class, new Read<>(NumberWords::large))
                .registerConverter(long.class, new Read<>(NumberWords::large))
                .registerConverter(Double.class, new Read<>(NumberWords::number));
    }

    /** By the name of the class, since to read what is written on it takes longer; the one that completes them needs them all. */
    private static boolean isOf(Class<?> type, String command) {
        return type != CompletionCommand.class
                && type.getSimpleName().toLowerCase(Locale.ROOT).equals(command + "command");
    }

    private static CommandSpec listed(Command command) {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage().description(command.description());
        return spec;
    }

    /** Called when no command was named, which is bad usage. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "a command is missing");
    }

    /** A word read by a function. As a class of its own, and no lambda, it comes ready with the program: seven of them took a twentieth of a help text. */
    private record Read<T>(Function<String, T> reading) implements ITypeConverter<T> {
        @Override
        public T convert(String word) {
            return reading.apply(word);
        }
    }

    static final class VersionLine implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return BuildInformation.current().lines().toArray(String[]::new);
        }
    }
}
