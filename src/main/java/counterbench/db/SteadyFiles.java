package counterbench.db;

import java.io.File;
import java.io.IOException;
import java.nio.channels.FileChannel;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * Files as H2's {@code async:} has them, which a Ctrl-C does not close, but read without handing
 * every page from one thread to another and back. That took H2 half the time of a long reading. H2
 * makes these by itself, from addresses that begin with {@value #SCHEME}.
 */
public final class SteadyFiles extends FilePathWrapper {
    static final String SCHEME = "steady";

    /** On Windows a lock, such as H2 takes, keeps out every other handle, its own process's too. */
    private static final boolean LOCKS_KEEP_OUT_ALL = File.separatorChar == '\\';

    /** For {@link #register} and for H2. */
    public SteadyFiles() {}

    /** Makes the scheme known to H2. */
    static void register() {
        FilePath.register(new SteadyFiles());
    }

    @Override
    public String getScheme() {
        return SCHEME;
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        String file = getBase().toString();
        return reading(file, FilePath.get("async:" + file).open(mode), LOCKS_KEEP_OUT_ALL);
    }

    /** Reads a file that a channel writes, through the channel where nothing else may. */
    static FileChannel reading(String file, FileChannel channel, boolean locksKeepOutAll)
            throws IOException {
        if (locksKeepOutAll) {
            return channel;
        }
        try {
            return new SteadyFile(file, channel);
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }
}
