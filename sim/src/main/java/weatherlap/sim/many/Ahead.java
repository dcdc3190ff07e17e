package weatherlap.sim.many;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * Something found on a thread of its own, begun before it is asked for. What goes wrong is thrown where it is asked for; where it never is, it
 * is dropped.
 */
public final class Ahead<T> {
    private final FutureTask<T> found;

    private Ahead(FutureTask<T> found) {
        this.found = found;
    }

    public static <T> Ahead<T> of(Supplier<T> work) {
        FutureTask<T> found = new FutureTask<>(work::get);
        Thread thread = new Thread(found, "ahead");
        thread.setDaemon(true);
        thread.start();
        return new Ahead<>(found);
    }

    /** What was found, once it is. */
    public T get() {
        try {
            return found.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The work was interrupted.", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) e.getCause();
        }
    }
}
