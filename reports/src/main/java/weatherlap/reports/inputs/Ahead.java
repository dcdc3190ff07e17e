package weatherlap.reports.inputs;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** Something to be read, begun on a thread of its own. What goes wrong is thrown where it is asked for; where it never is, it is dropped. */
final class Ahead<T> {
    private final FutureTask<T> reading;

    private Ahead(FutureTask<T> reading) {
        this.reading = reading;
    }

    static <T> Ahead<T> of(Supplier<T> read) {
        FutureTask<T> reading = new FutureTask<>(read::get);
        Thread thread = new Thread(reading, "reading ahead");
        thread.setDaemon(true);
        thread.start();
        return new Ahead<>(reading);
    }

    /** What was read, once it is. */
    T get() {
        try {
            return reading.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The reading was interrupted.", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) e.getCause();
        }
    }
}
