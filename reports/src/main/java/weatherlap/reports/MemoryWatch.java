package weatherlap.reports;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import weatherlap.reports.cli.Failures;

/**
 * Ends a run that has no memory to go on with. A JVM that is nearly full may spend all of its time collecting, run no further and hear no
 * signal, and never say that it is out of memory.
 */
final class MemoryWatch {
    /** With less not even the command line is read. */
    private static final long LEAST_BYTES = 22L << 20;

    private static final int SECONDS_OF_NOTHING_ELSE = 5;
    private static final double NEARLY_ALL = 0.9;

    /** Made while there is memory to make it with. */
    private static final byte[] MESSAGE =
            (Failures.OUT_OF_MEMORY + System.lineSeparator()).getBytes(StandardCharsets.UTF_8);

    private static final FileOutputStream ERR = new FileOutputStream(FileDescriptor.err);

    private MemoryWatch() {}

    /** Whether Java was given enough to begin with. */
    static boolean isEnough() {
        return Runtime.getRuntime().maxMemory() >= LEAST_BYTES;
    }

    /** Watches until the process ends; a thread that dies for want of memory, for whose result others would wait, ends it too. */
    static void begin() {
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> {
            if (failure instanceof OutOfMemoryError) {
                end();
            }
            failure.printStackTrace();
        });
        Thread watch = new Thread(MemoryWatch::run, "memory watch");
        watch.setDaemon(true);
        watch.setPriority(Thread.MAX_PRIORITY);
        watch.start();
    }

    private static void run() {
        try {
            watch();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void watch() throws InterruptedException {
        TimeUnit.SECONDS.sleep(1); // most runs are over by then
        List<GarbageCollectorMXBean> collectors = ManagementFactory.getGarbageCollectorMXBeans();
        long collected = milliseconds(collectors);
        long seen = System.nanoTime();
        for (int seconds = 0; seconds < SECONDS_OF_NOTHING_ELSE; ) {
            TimeUnit.SECONDS.sleep(1);
            long collectedBefore = collected;
            long seenBefore = seen;
            collected = milliseconds(collectors);
            seen = System.nanoTime();
            double share = (collected - collectedBefore) * 1e6 / (seen - seenBefore);
            seconds = share > NEARLY_ALL && isNearlyFull() ? seconds + 1 : 0;
        }
        end();
    }

    private static long milliseconds(List<GarbageCollectorMXBean> collectors) {
        long sum = 0;
        for (GarbageCollectorMXBean collector : collectors) {
            sum += collector.getCollectionTime();
        }
        return sum;
    }

    private static boolean isNearlyFull() {
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory() > NEARLY_ALL * runtime.maxMemory();
    }

    /** As the system would end it, so that what the run laid aside goes with it; at once where even that takes memory. */
    private static void end() {
        try {
            ERR.write(MESSAGE);
            Thread exit = new Thread(() -> System.exit(1));
            exit.setDaemon(true);
            exit.start();
            exit.join(TimeUnit.SECONDS.toMillis(SECONDS_OF_NOTHING_ELSE));
        } catch (IOException | InterruptedException | OutOfMemoryError e) {
            // it ends below
        } finally {
            Runtime.getRuntime().halt(1);
        }
    }
}
