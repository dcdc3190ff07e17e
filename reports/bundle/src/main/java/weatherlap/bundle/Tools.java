package weatherlap.bundle;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;

/** The tools of the JDK that runs the build, and what else is asked of the machine. */
final class Tools {
    private Tools() {}

    /**
     * Runs a tool of the JDK that runs the build, as a program of its own; what it printed.
     *
     * @throws IllegalStateException if the JDK has it not, or it fails
     */
    static String jdk(String name, List<String> arguments) {
        Path tool = Path.of(System.getProperty("java.home"), "bin", name);
        List<String> command = new ArrayList<>(List.of(tool.toString()));
        if (!name.equals("jpackage")) {
            command.addAll(List.of("-J-XX:TieredStopAtLevel=1", "-J-XX:+UseSerialGC")); // they run for seconds
        }
        command.addAll(arguments);
        return run(command);
    }

    /**
     * Runs a program; what it printed.
     *
     * @throws IllegalStateException if it is not there, or fails
     */
    static String run(List<String> command) {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (process.waitFor() != 0) {
                throw new IllegalStateException(String.join(" ", command) + "\n" + said);
            }
            return said;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Deletes a file, or a folder with all that is in it, where it is there. */
    static void delete(Path doomed) throws IOException {
        if (!Files.exists(doomed)) {
            return;
        }
        Files.walkFileTree(doomed, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path folder, IOException failure) throws IOException {
                Files.delete(folder);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
