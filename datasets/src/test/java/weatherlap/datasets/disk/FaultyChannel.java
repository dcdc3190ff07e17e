package weatherlap.datasets.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;

/** A file open for writing, of which any write can fail when half is written. */
final class FaultyChannel extends FileChannel {
    /** Asked before each write. */
    interface Check {
        void check() throws IOException;
    }

    private final FileChannel real;
    private final Check check;

    FaultyChannel(FileChannel real, Check check) {
        this.real = real;
        this.check = check;
    }

    @Override
    public int write(ByteBuffer bytes) throws IOException {
        try {
            check.check();
        } catch (IOException | Error e) {
            bytes.limit(bytes.position() + bytes.remaining() / 2);
            real.write(bytes);
            throw e;
        }
        return real.write(bytes);
    }

    @Override
    public int write(ByteBuffer bytes, long position) throws IOException {
        check.check();
        return real.write(bytes, position);
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
        check.check();
        real.truncate(size);
        return this;
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) throws IOException {
        return real.tryLock(position, size, shared);
    }

    @Override
    public FileLock lock(long position, long size, boolean shared) throws IOException {
        return real.lock(position, size, shared);
    }

    @Override
    public int read(ByteBuffer bytes) throws IOException {
        return real.read(bytes);
    }

    @Override
    public int read(ByteBuffer bytes, long position) throws IOException {
        return real.read(bytes, position);
    }

    @Override
    public long position() throws IOException {
        return real.position();
    }

    @Override
    public FileChannel position(long position) throws IOException {
        real.position(position);
        return this;
    }

    @Override
    public long size() throws IOException {
        return real.size();
    }

    @Override
    public void force(boolean metadata) throws IOException {
        real.force(metadata);
    }

    @Override
    protected void implCloseChannel() throws IOException {
        real.close();
    }

    @Override
    public long read(ByteBuffer[] bytes, int offset, int length) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long write(ByteBuffer[] bytes, int offset, int length) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel target) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long transferFrom(ReadableByteChannel source, long position, long count) {
        throw new UnsupportedOperationException();
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) {
        throw new UnsupportedOperationException();
    }
}
