package counterbench.review.store;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Reads on one thread, works on as many as there are processors beside it, and takes what comes of
 * it in the order of reading. Only a few hundred items are ahead, so that all processors are used
 * and memory stays small.
 */
final class ReadAhead<T, R> {
    private static final int AT_ONCE = 64;
    private static final int AHEAD = 8;
    private static final long POLL_MILLIS = 200;

    private final BlockingQueue<Future<List<R>>> queue = new ArrayBlockingQueue<>(AHEAD);

    /** Comes after the last, so that the taker wakes at once. */
    private final Future<List<R>> end = CompletableFuture.completedFuture(List.of());

    private final AtomicBoolean stopped = new AtomicBoolean();
    private final Function<T, R> work;
    private final ExecutorService workers =
            Executors.newFixedThreadPool(
                    Math.max(1, Runtime.getRuntime().availableProcessors() - 1),
                    task -> daemon(task, "counterbench-worker"));
    private volatile @Nullable Throwable failure;

    private ReadAhead(Function<T, R> work) {
        this.work = work;
    }

    /**
     * Gives what the work makes of every item of the source, in order, to the calling thread.
     *
     * @param work what is done with an item; on several threads at the same time
     */
    static <T, R> void each(Consumer<Consumer<T>> source, Function<T, R> work, Consumer<R> taker) {
        new ReadAhead<>(work).run(source, taker);
    }

    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }

    private void run(Consumer<Consumer<T>> source, Consumer<R> taker) {
        Thread reader = daemon(() -> read(source), "counterbench-reader");
        reader.start();
        try {
            for (List<R> some = next(); some != null; some = next()) {
                some.forEach(taker);
            }
        } finally {
            stopped.set(true);
            queue.clear();
            workers.shutdownNow();
            join(reader);
        }
        rethrow(failure);
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
            put(end);
        }
    }

    private void give(List<T> some) {
        List<T> copy = List.copyOf(some);
        some.clear();
        if (!put(workers.submit(() -> copy.stream().map(work).toList()))) {
            throw new IllegalStateException("nobody works on what is read any more");
        }
    }

    /** Waits until there is room; false if the taker wants no more. */
    private boolean put(Future<List<R>> worked) {
        try {
            while (!queue.offer(worked, POLL_MILLIS, TimeUnit.MILLISECONDS)) {
                if (stopped.get()) {
                    return false;
                }
            }
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("reading was interrupted", e);
        }
    }

    /** What came of the next items; null after the last. */
    private @Nullable List<R> next() {
        try {
            Future<List<R>> some = queue.take();
            return some == end ? null : some.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the work was interrupted", e);
        } catch (ExecutionException e) {
            rethrow(e.getCause());
            throw new IllegalStateException("the work failed", e);
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

    private static void rethrow(@Nullable Throwable thrown) {
        if (thrown instanceof RuntimeException runtime) {
            throw runtime;
        }
        if (thrown instanceof Error error) {
            throw error;
        }
    }
}
