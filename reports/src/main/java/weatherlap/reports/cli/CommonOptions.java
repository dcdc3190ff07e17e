package weatherlap.reports.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import weatherlap.reports.output.Messages;

/** Options that every command has. */
final class CommonOptions {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--quiet", description = "Print only results and errors.")
    private boolean quiet;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    private boolean help;

    Messages messages() {
        return new Terminal(spec.commandLine().getOut(), spec.commandLine().getErr(), quiet);
    }
}
