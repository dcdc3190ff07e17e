package weatherlap.reports.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;

/** Which folders may be written. */
final class OutputTarget {
    private OutputTarget() {}

    /** The folder itself, links followed, after the checks that need no lock. */
    static Path resolve(Path asked, List<Path> inputs) throws IOException {
        Path target = real(asked);
        if (target.getFileName() == null) {
            throw new OutputRefused("cannot write the root of a file system");
        }
        if (Files.exists(target) && !Files.isDirectory(target)) {
            throw new OutputRefused(asked + " is a file; a folder is needed");
        }
        if (!Files.exists(target) && Files.exists(asked, LinkOption.NOFOLLOW_LINKS)) {
            throw new OutputRefused(asked + " is a link that leads nowhere");
        }
        Path here = Path.of("").toRealPath();
        if (here.startsWith(target)) {
            throw new OutputRefused(asked + " is, or holds, the folder you stand in; name another");
        }
        for (Path input : inputs) {
            if (Files.exists(input) && input.toRealPath().startsWith(target)) {
                throw new OutputRefused(asked + " holds the input " + input + "; results need a folder of their own");
            }
        }
        return target;
    }

    /** The path with every link followed, whose last parts need not be there yet. */
    private static Path real(Path asked) throws IOException {
        Path whole = asked.toAbsolutePath();
        Path there = whole;
        while (!Files.exists(there)) {
            there = there.getParent();
        }
        Path real = there.toRealPath();
        for (int i = there.getNameCount(); i < whole.getNameCount(); i++) {
            Path part = whole.getName(i); // relativize would take the dots out by spelling
            if (part.toString().equals("..")) {
                throw new OutputRefused(asked + " leads through a folder that is not there");
            }
            real = part.toString().isEmpty() || part.toString().equals(".") ? real : real.resolve(part);
        }
        return real;
    }

    static void checkReplaceable(Path asked, Path target, boolean force) throws IOException {
        if (!Files.exists(target)) {
            return;
        }
        if (Folders.isMountPoint(target)) {
            throw new OutputRefused(
                    asked + " is where a file system begins, and cannot be exchanged; name a folder in it");
        }
        if (Folders.isEmpty(target)) {
            return;
        }
        if (!force) {
            throw new OutputRefused(asked + " is not empty; use --force to replace an earlier output");
        }
        Map<String, String> ours = RunFile.read(target.resolve(RunRecord.FILE))
                .map(RunFile::outputs)
                .orElseThrow(() -> new OutputRefused(
                        asked + " holds no run.json of this program and is left alone, even with --force"));
        Optional<String> empty = Folders.emptyFolder(target);
        if (empty.isPresent()) {
            throw new OutputRefused(asked + " also holds the empty folder " + empty.get()
                    + ", which this program did not make, and is left alone, even with --force");
        }
        SortedSet<String> files = Folders.files(target);
        files.remove(RunRecord.FILE);
        for (String file : files) {
            if (!ours.containsKey(file)) {
                throw new OutputRefused(asked + " also holds " + file
                        + ", which this program did not write, and is left alone, even with --force");
            }
        }
        try {
            Optional<String> edited = files.parallelStream()
                    .filter(file -> !unchecked(target.resolve(file)).equals(ours.get(file)))
                    .findFirst();
            if (edited.isPresent()) {
                throw new OutputRefused(asked + "/" + edited.get()
                        + " was edited after it was written, so the folder is left alone, even with --force");
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static String unchecked(Path file) {
        try {
            return Checksum.of(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What went wrong, in few words and without the path, which the message names already. */
    static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (e instanceof FileAlreadyExistsException) {
            return "a file stands in the way: " + Path.of(e.getMessage()).getFileName();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
