package weatherlap.datasets.sorting;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

/** Where parts of a table are set aside while it is sorted. */
@FunctionalInterface
public interface Scratch {
    /** Begins a part. */
    Part begin() throws IOException;

    /** Bytes set aside: written once, then read, then dropped. */
    interface Part {
        OutputStream write() throws IOException;

        InputStream read() throws IOException;

        void drop() throws IOException;
    }

    /** Compressed, in memory: for work that may write nothing. It grows with what it takes. */
    static Scratch inMemory() {
        return CompressedPart::new;
    }
}
