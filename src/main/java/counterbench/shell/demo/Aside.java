package counterbench.shell.demo;

import counterbench.shared.Interrupted;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Work that goes on beside the rest, on as many threads as there are processors. Closing it waits
 * for what was begun, whoever interrupts that, since its store is closed next.
 */
final class Aside implements AutoCloseable {
    private final ExecutorService workers =
            Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());

    /**
     * Begins a piece of work.
     *
     * @return waits for what comes of it; throws what the work throws, or {@link Interrupted}
     */
    <T> Supplier<T> begin(Supplier<T> work) {
        CompletableFuture<T> begun = CompletableFuture.supplyAsync(work, workers);
        return () -> result(begun);
    }

    private static <T> T result(CompletableFuture<T> begun) {
        try {
            return begun.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Interrupted();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            }
            throw new CompletionException(e.getCause());
        }
    }

    @Override
    public void close() {
        workers.shutdown();
        boolean interrupted = false;
        while (!workers.isTerminated()) {
            try {
                workers.awaitTermination(1, TimeUnit.MINUTES);
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
