package counterbench.review.store;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Reads on one thread and works on another, a few hundred items ahead at most, so that a second
 * core is used and memory stays small.
 */
final class ReadAhead<T> {
    private static final int AT_ONCE = 64;
    private static final int AHEAD = 8;
    private static final long POLL_MILLIS = 200;

    private final BlockingQueue<List<T>> queue = new ArrayBlockingQueue<>(AHEAD);
    private final AtomicBoolean done = new AtomicBoolean();
    private final AtomicBoolean stopped = new AtomicBoolean();
    private volatile @Nullable Throwable failure;

    /** Gives every item of the source, in order, to the work on the calling thread. */
    static <T> void each(Consumer<Consumer<T>> source, Consumer<T> work) {
        new ReadAhead<T>().run(source, work);
    }

    private void run(Consumer<Consumer<T>> source, Consumer<T> work) {
        Thread reader = new Thread(() -> read(source), "counterbench-reader");
        reader.setDaemon(true);
        reader.start();
        try {
            for (List<T> some = next(); some != null; some = next()) {
                some.forEach(work);
            }
        } finally {
            stopped.set(true);
            queue.clear();
            join(reader);
        }
        rethrow();
    }

    private void read(Consumer<Consumer<T>> source) {
        List<T> some = new ArrayList<>(AT_ONCE);
        try {
            source.accept(
                    item -> {
                        some.add(item);
                        if (some.size() == AT_ONCE) {
                            give(some);
                        }
                    });
            give(some);
        } catch (Throwable e) {
            failure = e;
        } finally {
            done.set(true);
        }
    }

    private void give(List<T> some) {
        List<T> copy = List.copyOf(some);
        some.clear();
        try {
            while (!queue.offer(copy, POLL_MILLIS, TimeUnit.MILLISECONDS)) {
                if (stopped.get()) {
                    throw new IllegalStateException("nobody works on what is read any more");
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("reading was interrupted", e);
        }
    }

    /** The next items; null after the last. */
    private @Nullable List<T> next() {
        try {
            while (true) {
                boolean ended = done.get();
                List<T> some = queue.poll(ended ? 0 : POLL_MILLIS, TimeUnit.MILLISECONDS);
                if (some != null || ended) {
                    return some;
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the work was interrupted", e);
        }
    }

    private static void join(Thread reader) {
        boolean interrupted = false;
        while (reader.isAlive()) {
            try {
                reader.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void rethrow() {
        Throwable thrown = failure;
        if (thrown instanceof RuntimeException runtime) {
            throw runtime;
        }
        if (thrown instanceof Error error) {
            throw error;
        }
    }
}
