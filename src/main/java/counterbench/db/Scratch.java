package counterbench.db;

import counterbench.spool.TemporaryFiles;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.h2.mvstore.MVStore;
import org.h2.mvstore.MVStoreException;
import org.jspecify.annotations.Nullable;

/**
 * What an import has to remember while it lasts: maps of which memory holds the part that was asked
 * for last, however large they grow. The rest lies in a temporary file, which only its owner can
 * read, and which goes when this is closed. While all maps are small there is no file.
 */
public final class Scratch implements AutoCloseable {
    private static final int CACHE_MEGABYTES = 8;
    private static final int UNWRITTEN_KILOBYTES = 2_048;

    /** How many pairs of a map are held in memory. */
    private static final int NEAR = 2_000;

    private final int near;
    private @Nullable Path file;
    private @Nullable MVStore store;
    private int opened;

    public Scratch() {
        this(NEAR);
    }

    Scratch(int near) {
        this.near = near;
    }

    /**
     * A new map, for one thread, without null; single pairs cannot be taken out of it.
     *
     * @param <K> String, Integer or Long
     * @param <V> of these, Boolean, or an array of them
     */
    public <K, V> Map<K, V> map() {
        return new ScratchMap<>(near, this::openMap);
    }

    /** The file, if one was needed. */
    Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    private <K, V> Map<K, V> openMap() {
        return attempt(() -> store().openMap(String.valueOf(++opened)));
    }

    private MVStore store() {
        if (store == null) {
            file = TemporaryFiles.create(".scratch");
            store =
                    new MVStore.Builder()
                            .fileName("nio:" + file)
                            .cacheSize(CACHE_MEGABYTES)
                            .autoCommitBufferSize(UNWRITTEN_KILOBYTES)
                            .open();
            store.setAutoCommitDelay(0);
            store.setRetentionTime(0);
            store.setVersionsToKeep(0);
        }
        return store;
    }

    /**
     * Does something with the file.
     *
     * @throws counterbench.shared.StoreUnusable if there is no room for it
     */
    static <T> T attempt(Supplier<T> something) {
        try {
            return something.get();
        } catch (MVStoreException e) {
            throw TemporaryFiles.unusable(e);
        }
    }

    @Override
    public void close() {
        if (store != null) {
            store.closeImmediately();
        }
        if (file != null) {
            TemporaryFiles.remove(file);
        }
    }
}
