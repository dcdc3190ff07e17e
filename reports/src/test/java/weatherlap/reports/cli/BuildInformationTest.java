package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.jar.Attributes;
import org.junit.jupiter.api.Test;

class BuildInformationTest {
    private static final String COMMIT = "0123456789abcdef0123456789abcdef01234567";

    @Test
    void namesVersionCommitAndJava() {
        assertThat(of("ok", COMMIT).lines())
                .containsExactly(
                        "weatherlap 9.8.7",
                        "commit: " + COMMIT,
                        "Java: 17 or newer, built with 21, running on " + System.getProperty("java.version"));
        assertThat(of("tainted", COMMIT).lines()).contains("commit: " + COMMIT + ", with changes on top of it");
    }

    @Test
    void saysWhereTheCommitIsNotKnown() {
        String unknown = "commit: not known, the build saw no git repository";
        assertThat(of("ok", "unknown").lines()).contains(unknown);
        assertThat(of("ok", "${git.commit}").lines()).contains(unknown);
        assertThat(Cli.run("--version").out()).startsWith("weatherlap ").contains("commit: ", "running on ");
    }

    private static BuildInformation of(String changes, String commit) {
        Attributes manifest = new Attributes();
        manifest.putValue("Implementation-Version", "9.8.7");
        manifest.putValue("Git-Commit", commit);
        manifest.putValue("Git-Changes", changes);
        manifest.putValue("Java-Version", "17");
        manifest.putValue("Build-Jdk-Spec", "21");
        return new BuildInformation(manifest);
    }
}
