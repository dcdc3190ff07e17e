package weatherlap.reports.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/** Two threads that take pieces of work in the order in which they are given. */
public final class TwoThreads implements AutoCloseable {
    /** A piece of work that may fail to write. */
    @FunctionalInterface
    public interface Work {
        void run() throws IOException;
    }

    private final ExecutorService pool = Executors.newFixedThreadPool(2);
    private final List<Future<?>> given = new ArrayList<>();

    /** Takes a piece of work, which is begun when a thread is free. */
    public void give(Work work) {
        given.add(pool.submit((Callable<Void>) () -> {
            work.run();
            return null;
        }));
    }

    /** Returns when all is done, or throws what went wrong first of it in the order given. */
    public void await() throws IOException {
        try {
            for (Future<?> work : given) {
                work.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The writing was interrupted.", e);
        } catch (ExecutionException e) {
            throw unwrapped(e.getCause());
        }
    }

    /** Drops what was not begun. The folder may be dropped only when nobody writes into it any more. */
    @Override
    public void close() {
        given.forEach(work -> work.cancel(false));
        pool.shutdown();
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
