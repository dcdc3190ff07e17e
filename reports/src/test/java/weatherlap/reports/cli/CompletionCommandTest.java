package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompletionCommandTest {
    @TempDir
    private Path folder;

    @Test
    void bashCompletesCommandsOptionsAndValues() throws Exception {
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no bash here");
        Path script = Files.writeString(
                folder.resolve("script"), Cli.run("completion", "bash").out());
        assertThat(completed(script, "weatherlap", "comp")).contains("compare", "completion");
        assertThat(completed(script, "weatherlap", "compare", "--assum")).containsExactly("--assumptions");
        assertThat(completed(script, "weatherlap", "crewsheet", "--method", ""))
                .containsExactly("full_flange", "full_frame", "insert", "plan");
        assertThat(completed(script, "weatherlap", "handout", "--paper", "")).containsExactly("letter", "a4");
    }

    @Test
    void zshGetsTheSameScript() {
        assertThat(Cli.run("completion", "zsh").out())
                .contains("bashcompinit")
                .isEqualTo(Cli.run("completion", "bash").out());
        assertThat(Cli.run("completion", "dos").status()).isEqualTo(2);
    }

    /** A shell in a terminal of its own gets keys, tabs among them, and runs the line that they make. */
    @Test
    void zshCompletesWhatIsTyped() throws Exception {
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/usr/bin/zsh")), "no zsh here");
        Path script = Files.writeString(
                folder.resolve("script"), Cli.run("completion", "zsh").out());
        Path keys = Files.writeString(folder.resolve("keys"), """
                zmodload zsh/zpty
                zpty -b terminal zsh -f -i
                zpty -w terminal "weatherlap() { print -r -- \\"ran:\\$*:\\" }; source $1 && print read''y"
                zpty -r terminal out '*ready*'
                zpty -w -n terminal $'weatherlap hand\\t--pap\\ta\\t'
                zpty -w -n terminal $'\\n'
                zpty -r terminal out '*ran:*:*'
                print -r -- $out
                zpty -d terminal
                """);
        ProcessBuilder typing = new ProcessBuilder("/usr/bin/zsh", "-f", keys.toString(), script.toString())
                .redirectError(folder.resolve("err").toFile())
                .redirectOutput(folder.resolve("out").toFile());
        typing.environment().put("HOME", folder.toString());
        Process zsh = typing.start();
        try {
            assertThat(zsh.waitFor(60, TimeUnit.SECONDS)).isTrue();
        } finally {
            zsh.destroyForcibly();
        }
        assertThat(folder.resolve("out")).content().contains("ran:handout --paper a4:");
    }

    /** What bash offers for the last word. */
    private List<String> completed(Path script, String... words) throws IOException, InterruptedException {
        String line = "source " + script + "; COMP_WORDS=(" + String.join(" ", quoted(words)) + "); COMP_CWORD="
                + (words.length - 1) + "; _complete_weatherlap; printf '%s\\n' \"${COMPREPLY[@]}\"";
        Process bash = new ProcessBuilder("/bin/bash", "-c", line)
                .redirectError(folder.resolve("err").toFile())
                .start();
        String out = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(bash.waitFor(30, TimeUnit.SECONDS)).isTrue();
        return out.lines().map(String::strip).toList();
    }

    private static List<String> quoted(String... words) {
        return java.util.Arrays.stream(words).map(word -> "'" + word + "'").toList();
    }
}
