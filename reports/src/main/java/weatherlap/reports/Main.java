package weatherlap.reports;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line {@code weatherlap}: picks the command named by the first argument and runs it. */
@Command(
        name = "weatherlap",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Compares full-flange and insert replacement of the windows of standing houses.",
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:done", "1:a fault of the program", "2:bad usage or bad input"})
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec;

    private Main() {}

    /** Runs the command line and ends the process with its exit status. */
    public static void main(String[] arguments) {
        System.exit(commandLine().execute(arguments));
    }

    /** The command line as a value, for tests and for {@link #main}. */
    static CommandLine commandLine() {
        return new CommandLine(new Main());
    }

    /** Called when no command was named, which is bad usage. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "a command is missing");
    }

    /** The version that the build wrote into the jar's manifest. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"weatherlap " + (version == null ? "(unpackaged)" : version)};
        }
    }
}
