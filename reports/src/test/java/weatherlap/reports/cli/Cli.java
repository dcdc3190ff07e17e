package weatherlap.reports.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One run of the command line within the test's own process. */
record Cli(int status, String out, String err) {
    static Cli run(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] texts =
                java.util.Arrays.stream(arguments).map(Object::toString).toArray(String[]::new);
        int status = Weatherlap.run(texts, new PrintWriter(out, true), new PrintWriter(err, true));
        return new Cli(status, out.toString(), err.toString());
    }

    /** What was said on standard error, but for what to do next. */
    java.util.stream.Stream<String> notes() {
        return err.lines().filter(line -> !line.startsWith("next: "));
    }
}
