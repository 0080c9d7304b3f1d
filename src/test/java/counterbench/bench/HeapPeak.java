package counterbench.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.Objects;
import java.util.concurrent.locks.LockSupport;

/**
 * The most heap that was in use after a full collection, since it began to watch: what the work
 * needs at the same time, without what merely waits to be collected. It asks for collections as
 * often as they take a twentieth of the time.
 */
final class HeapPeak implements AutoCloseable {
    private static final int TIMES_ITS_OWN = 20;
    private static final long LEAST_NANOS = 200_000_000;

    private final Thread watcher = new Thread(this::watch, "heap-peak");
    private volatile long peak;
    private volatile boolean closed;

    HeapPeak() {
        watcher.setDaemon(true);
        watcher.start();
    }

    private void watch() {
        while (!closed) {
            long began = System.nanoTime();
            System.gc();
            long took = System.nanoTime() - began;
            peak = Math.max(peak, usedAfterCollection());
            LockSupport.parkNanos(Math.max(LEAST_NANOS, took * TIMES_ITS_OWN));
        }
    }

    /** As the collector itself took it down, without what other threads have made since. */
    private static long usedAfterCollection() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getCollectionUsage)
                .filter(Objects::nonNull)
                .mapToLong(MemoryUsage::getUsed)
                .sum();
    }

    /** The peak so far. */
    long megabytes() {
        return peak >> 20;
    }

    @Override
    public void close() {
        closed = true;
        LockSupport.unpark(watcher);
    }
}
