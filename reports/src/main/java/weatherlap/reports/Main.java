package weatherlap.reports;

import java.io.BufferedOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;
import weatherlap.reports.cli.Failures;
import weatherlap.reports.cli.Weatherlap;

/** Starts the command line {@code weatherlap}. */
public final class Main {
    private Main() {}

    /** Runs the command line and ends the process with its exit status. */
    public static void main(String[] arguments) {
        // from Java 22 on a console is said to be there even where streams are redirected, unless this one is asked for
        System.setProperty("jdk.console", "java.base");
        OptionalInt elsewhere = LongRun.status(arguments);
        if (elsewhere.isPresent()) {
            System.exit(elsewhere.getAsInt());
        }
        StandardOutput standard = new StandardOutput();
        PrintWriter out = new PrintWriter(new BufferedOutputStream(standard), true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        if (!MemoryWatch.isEnough()) {
            err.println(Failures.OUT_OF_MEMORY);
            System.exit(1);
        }
        MemoryWatch.begin();
        Optional<DroppedWorkbook> dropped = DroppedWorkbook.in(arguments);
        int status = Weatherlap.run(dropped.map(DroppedWorkbook::command).orElse(arguments), out, err);
        out.flush();
        if (status == 0 && standard.failure().isPresent()) {
            err.println(
                    "could not print the whole result: " + standard.failure().get());
            status = 1;
        }
        err.flush();
        if (status == 0) {
            dropped.ifPresent(DroppedWorkbook::open);
        }
        System.exit(status);
    }
}
