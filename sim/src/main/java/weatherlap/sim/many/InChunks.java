package weatherlap.sim.many;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;

/** Many things done on several threads and taken in their order; no more than a few chunks of them are in memory at a time. */
public final class InChunks {
    private static final int CHUNK = 4;
    private static final int CHUNKS_A_THREAD = 3;

    private InChunks() {}

    /**
     * Takes things from a source, works on each, sums up each chunk and hands the sums over in order, on the calling thread.
     *
     * @param threads 1 or more
     */
    public static <A, B, T> void of(
            Iterator<A> source, int threads, Function<A, B> work, Function<List<B>, T> summary, Consumer<T> taker) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        Queue<Future<T>> pending = new ArrayDeque<>();
        try {
            while (source.hasNext()) {
                List<A> chunk = new ArrayList<>(CHUNK);
                while (chunk.size() < CHUNK && source.hasNext()) {
                    chunk.add(source.next());
                }
                pending.add(
                        pool.submit(() -> summary.apply(chunk.stream().map(work).toList())));
                if (pending.size() > threads * CHUNKS_A_THREAD) {
                    taker.accept(pending.remove().get());
                }
            }
            while (!pending.isEmpty()) {
                taker.accept(pending.remove().get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The simulation was interrupted.", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
