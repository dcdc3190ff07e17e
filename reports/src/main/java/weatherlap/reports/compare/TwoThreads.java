package weatherlap.reports.compare;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/** Two pieces of work at the same time. */
final class TwoThreads {
    /** A piece of work that may fail to write. */
    @FunctionalInterface
    interface Work {
        void run() throws IOException;
    }

    private TwoThreads() {}

    /** Runs the first on a thread of its own and the second here; returns when both are done, or throws what went wrong. */
    static void run(Work first, Work second) throws IOException {
        ExecutorService pool = Executors.newSingleThreadExecutor();
        try {
            Future<Void> other = pool.submit((Callable<Void>) () -> {
                first.run();
                return null;
            });
            try {
                second.run();
            } finally {
                pool.shutdown();
            }
            other.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The writing was interrupted.", e);
        } catch (ExecutionException e) {
            throw unwrapped(e.getCause());
        } finally {
            awaitEnd(pool);
        }
    }

    /** The folder may be dropped only when nobody writes into it any more. */
    private static void awaitEnd(ExecutorService pool) {
        try {
            while (!pool.awaitTermination(1, TimeUnit.MINUTES)) {
                pool.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static IOException unwrapped(Throwable cause) {
        if (cause instanceof RuntimeException fault) {
            throw fault;
        }
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof IOException io ? io : new IOException(cause);
    }
}
