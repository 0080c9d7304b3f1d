package counterbench.bench;

import java.lang.management.ManagementFactory;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * The most heap that was in use after a full collection, since it began to watch: what the work
 * needs at the same time, without what merely waits to be collected. It asks for collections as
 * often as they take a twentieth of the time.
 */
final class HeapPeak implements AutoCloseable {
    private static final int TIMES_ITS_OWN = 20;
    private static final long LEAST_NANOS = 200_000_000;

    private final ScheduledExecutorService watcher =
            Executors.newSingleThreadScheduledExecutor(HeapPeak::daemon);
    private volatile long peak;

    HeapPeak() {
        watcher.execute(this::look);
    }

    private static Thread daemon(Runnable task) {
        Thread thread = new Thread(task, "heap-peak");
        thread.setDaemon(true);
        return thread;
    }

    private void look() {
        long began = System.nanoTime();
        System.gc();
        long took = System.nanoTime() - began;
        long used = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
        peak = Math.max(peak, used);
        long pause = Math.max(LEAST_NANOS, took * TIMES_ITS_OWN);
        watcher.schedule(this::look, pause, TimeUnit.NANOSECONDS);
    }

    /** The peak so far. */
    long megabytes() {
        return peak >> 20;
    }

    @Override
    public void close() {
        watcher.shutdownNow();
    }
}
