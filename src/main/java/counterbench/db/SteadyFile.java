package counterbench.db;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import org.h2.store.fs.FileBase;

/**
 * A file that is written through one channel and read at positions through a handle of its own: a
 * {@link RandomAccessFile}, which no interrupt closes, unlike a channel.
 */
final class SteadyFile extends FileBase {
    private final FileChannel channel;
    private final RandomAccessFile reader;

    /**
     * @param channel of the same file; is closed with this
     */
    SteadyFile(String file, FileChannel channel) throws IOException {
        this.channel = channel;
        this.reader = new RandomAccessFile(file, "r");
    }

    @Override
    public synchronized int read(ByteBuffer into, long position) throws IOException {
        byte[] bytes = into.hasArray() ? into.array() : new byte[into.remaining()];
        int from = into.hasArray() ? into.arrayOffset() + into.position() : 0;
        reader.seek(position);
        int read = reader.read(bytes, from, into.remaining());
        if (read > 0 && into.hasArray()) {
            into.position(into.position() + read);
        } else if (read > 0) {
            into.put(bytes, 0, read);
        }
        return read;
    }

    /** Readers need not wait for it: the channel writes at positions on several threads. */
    @Override
    @SuppressWarnings("UnsynchronizedOverridesSynchronized")
    public int write(ByteBuffer from, long position) throws IOException {
        return channel.write(from, position);
    }

    @Override
    public int read(ByteBuffer into) throws IOException {
        return channel.read(into);
    }

    @Override
    public int write(ByteBuffer from) throws IOException {
        return channel.write(from);
    }

    @Override
    public long position() throws IOException {
        return channel.position();
    }

    @Override
    public FileChannel position(long position) throws IOException {
        channel.position(position);
        return this;
    }

    @Override
    public long size() throws IOException {
        return channel.size();
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
        channel.truncate(size);
        return this;
    }

    @Override
    public void force(boolean withMetadata) throws IOException {
        channel.force(withMetadata);
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) throws IOException {
        return channel.tryLock(position, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
        try {
            reader.close();
        } finally {
            channel.close();
        }
    }

    @Override
    public String toString() {
        return channel.toString();
    }
}
