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
        name = CompletionCommand.NAME,
        description = "Prints a script that lets your shell complete commands, options and values with the tab key.",
        footer = {
            "",
            "weatherlap may be an alias. Examples, for this shell:",
            "  weatherlap completion bash > ~/.weatherlap-completion; source ~/.weatherlap-completion",
            "  weatherlap completion zsh > ~/.weatherlap-completion; source ~/.weatherlap-completion",
            "To have it in every new shell, add that last command, and the alias, to ~/.bashrc or ~/.zshrc."
        })
final class CompletionCommand implements Callable<Integer> {
    static final String NAME = "completion";

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
            description = "The shell that reads it: bash or zsh.")
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
