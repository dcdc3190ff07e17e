package weatherlap.datasets.sorting;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/** A part in memory. */
final class CompressedPart implements Scratch.Part {
    private byte[] bytes = {};

    @Override
    public OutputStream write() {
        return new DeflaterOutputStream(new ByteArrayOutputStream() {
            @Override
            public void close() {
                bytes = toByteArray();
            }
        });
    }

    @Override
    public InputStream read() {
        return new InflaterInputStream(new ByteArrayInputStream(bytes));
    }

    @Override
    public void drop() {
        bytes = new byte[0];
    }
}
