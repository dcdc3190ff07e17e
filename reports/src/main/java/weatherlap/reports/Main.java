package weatherlap.reports;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import weatherlap.reports.cli.Weatherlap;

/** Starts the command line {@code weatherlap}. */
public final class Main {
    private Main() {}

    /** Runs the command line and ends the process with its exit status. */
    public static void main(String[] arguments) {
        // from Java 22 on a console is said to be there even where streams are redirected, unless this one is asked for
        System.setProperty("jdk.console", "java.base");
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int status = Weatherlap.run(arguments, out, err);
        out.flush();
        err.flush();
        System.exit(status);
    }
}
