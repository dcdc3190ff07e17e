package weatherlap.reports.output;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import weatherlap.reports.format.Content;

/** A single file that appears whole or not at all, and never in the place of another: what a user types into it would be lost. */
public final class OutputFile {
    private OutputFile() {}

    /** @throws OutputRefused if something stands there, or nothing may be written there */
    public static void write(Path asked, Content content) {
        Path target = asked.toAbsolutePath().normalize();
        Path fresh = target.resolveSibling("." + target.getFileName() + ".weatherlap-new");
        try {
            refuseWhereTaken(asked, target);
            List<Path> made = Folders.create(target.getParent());
            try {
                try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(fresh))) {
                    content.writeTo(out);
                }
                Files.move(fresh, target);
            } finally {
                clear(fresh, made);
            }
        } catch (FileAlreadyExistsException e) {
            refuseWhereTaken(asked, target);
            throw new OutputRefused("cannot write " + asked + " (" + OutputTarget.reason(e) + ")", e);
        } catch (IOException e) {
            throw new OutputRefused("cannot write " + asked + " (" + OutputTarget.reason(e) + ")", e);
        }
    }

    /** What the disk does not let it clear, the next run does; whether the file stands was decided before. */
    private static void clear(Path fresh, List<Path> made) {
        try {
            Files.deleteIfExists(fresh);
            Folders.deleteEmpty(made);
        } catch (IOException e) {
            // as said above
        }
    }

    private static void refuseWhereTaken(Path asked, Path target) {
        if (Folders.exists(target)) {
            throw new OutputRefused(asked
                    + " exists and may hold your work, so it is left alone, even with --force; name another file");
        }
    }
}
