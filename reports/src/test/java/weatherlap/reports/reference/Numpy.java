package weatherlap.reports.reference;

import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** A Python that has numpy: the first of the path's, else Debian's own. */
record Numpy(String python) {
    private static final Path SCRIPTS = Path.of("src", "test", "numpy").toAbsolutePath();

    /** How a script ended and what it said. */
    record Ended(int status, String text) {}

    static Numpy find() throws IOException, InterruptedException {
        for (String python : List.of("python3", "/usr/bin/python3")) {
            if (runs(python)) {
                return new Numpy(python);
            }
        }
        String what = "no python3 (3.11 or later) that imports numpy";
        if ("true".equals(System.getenv("WEATHERLAP_REQUIRE_NUMPY"))) {
            return fail(what + ", and WEATHERLAP_REQUIRE_NUMPY is true");
        }
        Assumptions.abort(what + ": the comparison with the reference is skipped");
        throw new IllegalStateException(what);
    }

    private static boolean runs(String python) throws IOException, InterruptedException {
        try {
            return run(List.of(python, "-c", "import numpy, tomllib")).status() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    /** Runs one of the reference's scripts to its end. */
    Ended run(String script, Object... arguments) throws IOException, InterruptedException {
        List<String> command =
                new ArrayList<>(List.of(python, SCRIPTS.resolve(script).toString()));
        Arrays.stream(arguments).map(Object::toString).forEach(command::add);
        return run(command);
    }

    private static Ended run(List<String> command) throws IOException, InterruptedException {
        Path out = Files.createTempFile("numpy", ".txt");
        try {
            ProcessBuilder builder =
                    new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out.toFile());
            builder.environment().put("PYTHONDONTWRITEBYTECODE", "1");
            Process process = builder.start();
            if (!process.waitFor(120, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("no end after two minutes: " + command);
            }
            return new Ended(process.exitValue(), Files.readString(out));
        } finally {
            Files.delete(out);
        }
    }
}
