package weatherlap.reports.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.workbook.InputWorkbooks;

/** The command line {@code weatherlap}: picks the command named by the first argument and runs it. */
@Command(
        name = "weatherlap",
        mixinStandardHelpOptions = true,
        versionProvider = Weatherlap.VersionLine.class,
        description = "Compares ways to replace the windows of standing houses: full-flange, full-frame, insert.",
        subcommands = {
            CompareCommand.class,
            GenerateCommand.class,
            CheckCommand.class,
            ExplainCommand.class,
            HandoutCommand.class,
            CrewsheetCommand.class,
            AssumptionsCommand.class,
            CalibrateCommand.class,
            CallbacksCommand.class,
            SiteCommand.class,
            ExposureCommand.class,
            BreakevenCommand.class,
            DriversCommand.class,
            DiffCommand.class,
            CompletionCommand.class
        },
        footer = {
            "",
            "Examples:",
            "  weatherlap compare --out report",
            "  weatherlap generate --template --out my-houses",
            "  weatherlap compare --help"
        },
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:done", "1:a fault of the program", "2:bad usage or bad input"})
public final class Weatherlap implements Runnable {
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
        CommandLine commandLine = commandLine().registerConverter(Path.class, workbooks::folder);
        commandLine.setOut(out);
        commandLine.setErr(err);
        commandLine.setParameterExceptionHandler(Failures::badUsage);
        commandLine.setExecutionExceptionHandler((failure, command, parsed) -> Failures.report(failure, err));
        commandLine.setExecutionStrategy(parsed -> {
            if (!workbooks.problems().isEmpty()) {
                return Failures.report(new BadInput(workbooks.problems()), err);
            }
            workbooks.warnings().forEach(warning -> err.println("warning: " + warning));
            return new CommandLine.RunLast().execute(parsed);
        });
        commandLine.setUsageHelpAutoWidth(false);
        commandLine.setUsageHelpWidth(100);
        try {
            return commandLine.execute(arguments);
        } catch (Error error) {
            return Failures.report(error, err);
        } finally {
            out.flush();
            err.flush();
        }
    }

    /** All commands, ready to parse. */
    static CommandLine commandLine() {
        return new CommandLine(new Weatherlap())
                .setExpandAtFiles(false)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .registerConverter(Integer.class, NumberWords::whole)
                .registerConverter(int.class, NumberWords::whole)
                .registerConverter(Long.class, NumberWords::large)
                .registerConverter(long.class, NumberWords::large)
                .registerConverter(Double.class, NumberWords::number);
    }

    /** Called when no command was named, which is bad usage. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "a command is missing");
    }

    static final class VersionLine implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return BuildInformation.current().lines().toArray(String[]::new);
        }
    }
}
