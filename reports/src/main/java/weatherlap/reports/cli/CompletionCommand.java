package weatherlap.reports.cli;

import java.util.Iterator;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import weatherlap.reports.options.EnumWords;

@Command(
        name = "completion",
        description = "Prints a script that lets the shell complete commands, options and their values.",
        footer = {
            "",
            "weatherlap may be an alias. Examples, for this shell:",
            "  weatherlap completion bash > ~/.weatherlap-completion; source ~/.weatherlap-completion",
            "  weatherlap completion zsh > ~/.weatherlap-completion; source ~/.weatherlap-completion",
            "For every new one, add that last command to ~/.bashrc or ~/.zshrc; there the alias goes too."
        })
final class CompletionCommand implements Callable<Integer> {
    /** Shells that can read the script; one script serves both. */
    enum Shell {
        BASH,
        ZSH
    }

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "SHELL",
            completionCandidates = Words.class,
            description = "Shell that is to read it: bash or zsh.")
    private Shell shell;

    @Override
    public Integer call() {
        common.messages().result(AutoComplete.bash("weatherlap", spec.root().commandLine()));
        return 0;
    }

    static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return EnumWords.of(Shell.class).iterator();
        }
    }
}
