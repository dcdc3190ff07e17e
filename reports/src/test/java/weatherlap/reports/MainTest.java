package weatherlap.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import weatherlap.reports.cli.Weatherlap;

class MainTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void helpNamesTheProgramAndItsExitStatus() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString()).startsWith("Usage: weatherlap").contains("a mistake in the command");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aMissingCommandIsBadUsage() {
        assertThat(run()).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).startsWith("a command is missing").endsWith("try: weatherlap --help\n");
    }

    @Test
    void anUnknownOptionIsBadUsage() {
        assertThat(run("--no-such-option")).isEqualTo(2);
        assertThat(err.toString()).contains("--no-such-option");
    }

    private int run(String... arguments) {
        return Weatherlap.run(arguments, new PrintWriter(out, true), new PrintWriter(err, true));
    }
}
