package weatherlap.reports.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The command line in a Java process of its own, with the classes of the tests. */
record OwnProcess(Process process, Path out, Path err) {
    static OwnProcess start(Path folder, List<String> javaOptions, Object... arguments) throws IOException {
        return start(folder, Path.of(System.getProperty("java.home")), javaOptions, arguments);
    }

    /** @param prefix of the command, such as a shell that sets limits; it ends in running what follows */
    static OwnProcess startUnder(List<String> prefix, Path folder, List<String> javaOptions, Object... arguments)
            throws IOException {
        List<String> command = new ArrayList<>(prefix);
        command.addAll(command(Path.of(System.getProperty("java.home")), javaOptions, arguments));
        return start(folder, new ProcessBuilder(command));
    }

    static OwnProcess start(Path folder, Path javaHome, List<String> javaOptions, Object... arguments)
            throws IOException {
        return start(folder, new ProcessBuilder(command(javaHome, javaOptions, arguments)));
    }

    /** Another program of the tests. */
    static OwnProcess startMain(Class<?> main, Path folder, List<String> javaOptions, Object... arguments)
            throws IOException {
        return start(
                folder,
                new ProcessBuilder(
                        command(Path.of(System.getProperty("java.home")), javaOptions, main.getName(), arguments)));
    }

    private static OwnProcess start(Path folder, ProcessBuilder builder) throws IOException {
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        builder.redirectOutput(out.toFile()).redirectError(err.toFile()).directory(folder.toFile());
        return new OwnProcess(builder.start(), out, err);
    }

    private static List<String> command(Path javaHome, List<String> javaOptions, Object... arguments) {
        return command(javaHome, javaOptions, "weatherlap.reports.Main", arguments);
    }

    private static List<String> command(Path javaHome, List<String> javaOptions, String main, Object... arguments) {
        List<String> command = new ArrayList<>(List.of(
                javaHome.resolve("bin/java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto"));
        command.addAll(javaOptions);
        command.addAll(List.of(
                "-cp", System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")), main));
        Arrays.stream(arguments).map(Object::toString).forEach(command::add);
        return command;
    }

    /** Waits for its end. */
    Cli ended() throws IOException, InterruptedException {
        if (!process.waitFor(300, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("the process does not end");
        }
        return new Cli(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    /** SIGKILL. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }
}
