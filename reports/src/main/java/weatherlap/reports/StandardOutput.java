package weatherlap.reports;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/**
 * Standard output that remembers what went wrong with it. {@link System#out} forgets why, so that a full disk could not be told from a
 * reader that has seen enough.
 */
final class StandardOutput extends OutputStream {
    private final OutputStream descriptor = new FileOutputStream(FileDescriptor.out);
    private IOException failure;

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        try {
            descriptor.write(bytes, offset, length);
        } catch (IOException e) {
            failure = failure == null ? e : failure;
            throw e;
        }
    }

    /** Why something was not written; empty where all was, or where the reader at the other end of a pipe left. */
    Optional<String> failure() {
        return Optional.ofNullable(failure)
                .map(e -> String.valueOf(e.getMessage()))
                .filter(reason -> !reason.contains("Broken pipe") && !reason.contains("pipe is being closed"));
    }
}
