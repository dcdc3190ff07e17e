package weatherlap.analysis.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.ref.Reference;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.jobs.JobReader;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobText;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.datasets.table.Source;
import weatherlap.sim.assumptions.Assumptions;

/** What a calibration keeps of each job, counted by what the heap holds more once it is swept. */
class BytesOfAJobTest {
    private static final int JOBS = 2000;
    private static final Assumptions TABLES = AssumptionTables.bundled().assumptions();

    private static long held() {
        for (int sweep = 0; sweep < 3; sweep++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    private static <T> double bytes(Supplier<T> made) {
        assertThat(made.get()).isNotNull();
        long before = held();
        T kept = made.get();
        double bytes = (held() - before) / (double) JOBS;
        Reference.reachabilityFence(kept);
        return bytes;
    }

    /** Records 740 and what the fit reads of them 310, where they were 1,200 and 830. */
    @Test
    void jobsTakeLittle() {
        MadeShop shop = MadeShop.drawn(TABLES, 0.1, 1);
        String text = JobText.of(new JobMaker(TABLES, shop, 0.15, 0.15, 1).jobs(JOBS), TABLES);
        Supplier<List<JobRecord>> read =
                () -> JobReader.read(Source.of("jobs.csv", text), TABLES).orElseThrow();
        List<JobRecord> jobs = read.get();
        assertThat(bytes(read)).isLessThan(900);
        assertThat(bytes(() -> JobTable.of(TABLES, jobs))).isLessThan(450);
    }
}
