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
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Source;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.House;

class CallReaderTest {
    private static final Assumptions TABLES = AssumptionTables.bundled().assumptions();
    private static final String HEAD = "job_id,opening,called,cause,damage,cost_usd,paid_by\n";

    @TempDir
    Path temporary;

    private static Loaded<List<FollowedJob>> read(String jobs, String calls) {
        return CallReader.read(
                Source.of("jobs.csv", jobs), Source.of("callbacks.csv", calls), TABLES, JobHouses.unmeasured());
    }

    @TestFactory
    Stream<DynamicTest> badCalls() {
        return Corpus.CALLBACKS.tests(
                "corpus/callbacks.txt", temporary, folder -> CallReader.read(folder, TABLES, JobHouses.unmeasured()));
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

    /** The first house of the demo behind vinyl siding. */
    @Test
    void recordsAreHeldAgainstTheHousesThatTheyName() {
        House demo = DemoPortfolio.load().houses().stream()
                .filter(house -> house.cladding() == Cladding.VINYL_SIDING)
                .findFirst()
                .orElseThrow();
        String head = "job_id,house_id,method,openings,date,cladding,storeys\n";
        int windows = demo.openingCount();
        String storeys = "," + demo.storeys() + "\n";
        String jobs = head + "j," + demo.id() + ",full_flange," + windows + ",2015-06-01,vinyl_siding" + storeys
                + "k," + demo.id() + ",insert," + (windows + 1) + ",2015-06-01," + storeys
                + "l,nowhere,insert,2,2015-06-01,,1\n"
                + "m," + demo.id() + ",insert,1,2015-06-01,brick_veneer" + storeys;
        Loaded<List<FollowedJob>> read = CallReader.read(
                Source.of("jobs.csv", jobs), Source.of("callbacks.csv", HEAD), TABLES, JobHouses.of(List.of(demo)));
        assertThat(read.errors())
                .extracting(Object::toString)
                .containsExactly("jobs.csv:3:openings: " + (windows + 1) + " are more than the " + windows
                        + " of house \"" + demo.id() + "\" in the portfolio");
        assertThat(read.warnings())
                .extracting(Object::toString)
                .contains(
                        "jobs.csv:4:house_id: \"nowhere\" is not one of your measured houses; the row counts as it"
                                + " stands, with ordinary values where it is empty",
                        "jobs.csv:5:cladding: \"brick_veneer\" is vinyl_siding in your measured houses, and that"
                                + " counts");
    }

    @Test
    void theHouseBehindAJobIsTheOneMeasuredOrTheOneOfItsFacts() {
        House demo = DemoPortfolio.load().houses().get(0);
        List<FollowedJob> jobs = read(
                        "job_id,house_id,method,openings,date\nj," + demo.id()
                                + ",insert,1,2015-06-01\nk,,insert,1,2015-06-01\n" + "l,other,insert,2,2015-06-01\n",
                        HEAD)
                .orElseThrow();
        JobHouses houses = JobHouses.of(List.of(demo));
        assertThat(houses.of(jobs.get(0).job())).isSameAs(demo);
        assertThat(houses.of(jobs.get(1).job()))
                .isSameAs(houses.of(jobs.get(2).job()))
                .isNotEqualTo(demo);
    }

    @Test
    void aTableWithoutACallSaysThatNobodyCalled() {
        List<FollowedJob> jobs = read(
                        "job_id,method,openings,date,followed_until\nj,insert,9,2015-06-01,2020-06-01\n", HEAD)
                .orElseThrow();
        assertThat(jobs.get(0).leaks()).isEmpty();
        assertThat(jobs.get(0).years()).isCloseTo(5, within(0.01));
    }
}
