package weatherlap.datasets.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import weatherlap.datasets.sorting.Scratch;

/** Memory that counts what was set aside and what of it is still there; it may be made to fail. */
public final class CountedScratch implements Scratch {
    private final Scratch memory = Scratch.inMemory();
    private final int room;
    private int begun;
    private int kept;

    public CountedScratch() {
        this(Integer.MAX_VALUE);
    }

    /** @param room for so many parts; the next one fails as on a full disk */
    public CountedScratch(int room) {
        this.room = room;
    }

    public int begun() {
        return begun;
    }

    public int kept() {
        return kept;
    }

    @Override
    public Part begin() throws IOException {
        if (begun == room) {
            throw new IOException("No space left on device");
        }
        Part part = memory.begin();
        begun++;
        kept++;
        return new Part() {
            @Override
            public OutputStream write() throws IOException {
                return part.write();
            }

            @Override
            public InputStream read() throws IOException {
                return part.read();
            }

            @Override
            public void drop() throws IOException {
                part.drop();
                kept--;
            }
        };
    }
}
