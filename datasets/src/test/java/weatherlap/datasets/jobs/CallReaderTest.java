package weatherlap.datasets.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Source;
import weatherlap.sim.assumptions.Assumptions;

class CallReaderTest {
    private static final Assumptions TABLES = AssumptionTables.bundled().assumptions();
    private static final String HEAD = "job_id,opening,called,cause,damage,cost_usd,paid_by\n";

    @TempDir
    Path temporary;

    private static Loaded<List<FollowedJob>> read(String jobs, String calls) {
        return CallReader.read(Source.of("jobs.csv", jobs), Source.of("callbacks.csv", calls), TABLES);
    }

    @TestFactory
    Stream<DynamicTest> badCalls() {
        return Corpus.CALLBACKS.tests("corpus/callbacks.txt", temporary, folder -> CallReader.read(folder, TABLES));
    }

    @Test
    void aJobIsFollowedUntilTheRecordsEndUnlessItWasLost() {
        List<FollowedJob> jobs = read(
                        "job_id,method,openings,date,finished,followed_until\n"
                                + "kept,insert,4,2015-06-01,2015-06-03,\nlost,insert,4,2015-06-01,,2016-06-01\n",
                        HEAD + "kept,W1,2020-06-03,leak,yes,400,shop\n")
                .orElseThrow();
        assertThat(jobs.get(0).years()).isCloseTo(5, within(0.01));
        assertThat(jobs.get(0).openingYears()).isCloseTo(20, within(0.04));
        assertThat(jobs.get(1).years()).isCloseTo(1, within(0.01));
    }

    /** A window counts once; a leak without damage and what is no leak do not count; a cause that nobody kept is no leak. */
    @Test
    void theFirstLeakOfAWindowCounts() {
        List<FollowedJob> jobs = read(
                        "job_id,method,openings,date\nj,insert,9,2015-06-01\n",
                        HEAD + "j,W1,2018-01-02,leak,yes,,\nj,W1,2017-01-02,leak,,,\nj,W2,2018-01-02,leak,no,,\n"
                                + "j,W3,2018-01-02,air,,,\nj,,2018-01-02,leak,yes,,\nj,,2018-01-02,leak,yes,,\nj,W4,2018-01-02,,,,\n")
                .orElseThrow();
        assertThat(jobs.get(0).calls()).hasSize(7);
        assertThat(jobs.get(0).leaks())
                .extracting(call -> call.opening().orElse("-") + call.called())
                .containsExactly("W12017-01-02", "-2018-01-02", "-2018-01-02");
    }

    @Test
    void callsReadBackAsWritten() {
        String jobs = "job_id,method,openings,date\nj,insert,9,2015-06-01\n";
        String calls = HEAD + "j,W1,2017-01-02,leak,yes,12.5,shop\nj,,2018-01-02,,,,\n";
        assertThat(CallText.of(read(jobs, calls).orElseThrow().get(0).calls())).isEqualTo(calls);
    }
}
