package weatherlap.reports.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.output.OutputRefused;

/** Turns what went wrong into an exit status and a message that helps; a stack trace shows with {@code -Dweatherlap.debug}. */
public final class Failures {
    /** What a fault of the program's own is called; inputs never lead there. */
    static final String BROKE = "the program broke down";

    /** What is said of a run that has no memory to go on with. */
    public static final String OUT_OF_MEMORY =
            "out of memory: lower --draws, run fewer houses at a time, or give Java more with -Xmx (java -Xmx4g -jar"
                    + " …)";

    static final int FAULT = 1;
    static final int BAD = 2;

    private Failures() {}

    /** Options that cannot be understood. */
    static int badUsage(ParameterException failure, String[] arguments) {
        CommandLine command = failure.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(Terminals.plain(failure.getMessage()));
        CommandLine.UnmatchedArgumentException.printSuggestions(failure, err);
        err.println("try: " + command.getCommandSpec().qualifiedName() + " --help");
        err.flush();
        return BAD;
    }

    /** Anything else. */
    static int report(Throwable failure, PrintWriter err) {
        int status = failure instanceof BadInput || failure instanceof OutputRefused ? BAD : FAULT;
        err.println(Terminals.plain(message(failure)));
        if (Boolean.getBoolean("weatherlap.debug") || "".equals(System.getProperty("weatherlap.debug"))) {
            failure.printStackTrace(err);
        }
        err.flush();
        return status;
    }

    private static String message(Throwable failure) {
        if (failure instanceof BadInput bad) {
            return String.join("\n", bad.problems()) + (bad.next().isEmpty() ? "" : "\nnext: " + bad.next());
        }
        if (failure instanceof OutputRefused) {
            return failure.getMessage();
        }
        if (isOutOfMemory(failure)) {
            return OUT_OF_MEMORY + "; nothing was written";
        }
        Optional<Throwable> io = causes(failure).filter(Failures::isOfTheSystem).findFirst();
        if (io.isPresent()) {
            return "cannot read or write: " + io(io.get()) + "; nothing was written";
        }
        return BROKE + ": " + failure + " (run with java -Dweatherlap.debug to see where)";
    }

    private static boolean isOutOfMemory(Throwable failure) {
        return causes(failure).anyMatch(OutOfMemoryError.class::isInstance);
    }

    private static boolean isOfTheSystem(Throwable failure) {
        return failure instanceof IOException || failure instanceof UncheckedIOException;
    }

    /** Also what happened on another thread or while a class was made ready. */
    private static Stream<Throwable> causes(Throwable failure) {
        return Stream.iterate(failure, Objects::nonNull, Throwable::getCause);
    }

    private static String io(Throwable failure) {
        boolean wrapped = failure instanceof UncheckedIOException
                && String.valueOf(failure.getCause()).equals(failure.getMessage());
        if (wrapped) {
            return io(failure.getCause());
        }
        if (failure instanceof FileSystemException file && file.getFile() != null) {
            String reason = file.getReason() == null ? file.getClass().getSimpleName() : file.getReason();
            Path name = Path.of(file.getFile()).getFileName();
            return name + ": " + reason;
        }
        return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    }
}
