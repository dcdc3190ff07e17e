package weatherlap.datasets.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Source;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.method.Method;

class JobReaderTest {
    private static final Assumptions TABLES = AssumptionTables.bundled().assumptions();

    private static Loaded<List<JobRecord>> read(String text) {
        return JobReader.read(Source.of("jobs.csv", text), TABLES);
    }

    @Test
    void aRecordOfTheLeastThatAShopKeeps() {
        JobRecord job = read("job_id,method,openings,person_hours\nj1,insert,8,23.5\n")
                .orElseThrow()
                .get(0);
        assertThat(job.method()).isEqualTo(Method.INSERT);
        assertThat(job.personHours()).hasValue(23.5);
        assertThat(job.counted()).isEqualTo(JobRecord.Counted.NOTHING);
    }

    @Test
    void factsAndTimedStepsAreKept() {
        JobRecord job = read("job_id,method,openings,cladding,in_set,date\nj1,insert,8,stucco,190,2024-05-31\n")
                .orElseThrow()
                .get(0);
        assertThat(job.facts()).containsEntry(Fact.CLADDING, "stucco");
        assertThat(job.stepMinutes()).containsOnlyKeys("in_set").containsEntry("in_set", 190.0);
        assertThat(job.date()).hasToString("Optional[2024-05-31]");
    }

    @Test
    void everyProblemIsNamedAtItsCell() {
        Loaded<List<JobRecord>> loaded = read(
                "job_id,method,openings,person_hours,date\nj1,insrt,8,20,\nj1,insert,0,20,\nj2,insert,3,-1,\nj3,insert,3,9,May\n");
        assertThat(loaded.errors())
                .extracting(Problem::toString)
                .satisfiesExactlyInAnyOrder(
                        e -> assertThat(e).startsWith("jobs.csv:2:method: "),
                        e -> assertThat(e).startsWith("jobs.csv:3:openings: "),
                        e -> assertThat(e).startsWith("jobs.csv:3:job_id: "),
                        e -> assertThat(e).startsWith("jobs.csv:4:person_hours: "),
                        e -> assertThat(e).startsWith("jobs.csv:5:date: "));
    }

    @Test
    void aJobThatTellsNothingIsAWarning() {
        assertThat(read("job_id,method,openings\nj1,insert,8\n").warnings()).hasSize(1);
    }

    @Test
    void aMissingFileIsAProblem() {
        assertThat(JobReader.read(Path.of("no-such-jobs.csv"), TABLES).errors()).isNotEmpty();
    }

    @Test
    void whatIsWrittenReadsBackAsTheSame() {
        MadeShop shop = MadeShop.drawn(TABLES, 0.1, 5);
        List<JobRecord> made = new JobMaker(TABLES, shop, 0.15, 0.3, 5).jobs(25);
        assertThat(read(JobText.of(made, TABLES)).orElseThrow()).isEqualTo(made);
    }

    @Test
    void moreJobsDoNotChangeTheEarlierOnes() {
        JobMaker maker = new JobMaker(TABLES, MadeShop.drawn(TABLES, 0.1, 5), 0.15, 0.3, 5);
        assertThat(maker.jobs(20).subList(0, 6)).isEqualTo(maker.jobs(6));
    }

    /** A shop at the tables' rates and without spread takes just what its work expects. */
    @Test
    void madeJobsTakeTheirTrueMinutes() {
        java.util.Map<String, Double> minutes = new java.util.HashMap<>();
        TABLES.steps().forEach(step -> minutes.put(step.id(), step.minutes().mean()));
        for (JobRecord job : new JobMaker(TABLES, new MadeShop(minutes), 0, 0, 3).jobs(20)) {
            double expected = JobWork.of(TABLES, job).expectedMinutes() / 60;
            assertThat(job.personHours().orElseThrow()).isCloseTo(expected, within(0.005001));
        }
    }

    /**
     * By hand: the step that sets an insert has the unit as its driver and no weather in it; 8 openings at the bundled learning slope
     * of 0.95 take the mean of n^log2(0.95), n = 1 to 8, which is 0.90765.
     */
    @Test
    void weightsAreQuantityTimesPace() {
        JobRecord job = read("job_id,method,openings,person_hours\nj1,insert,8,20\n")
                .orElseThrow()
                .get(0);
        LabourStep set = TABLES.steps().stream()
                .filter(step -> step.id().equals("in_set"))
                .findFirst()
                .orElseThrow();
        assertThat(JobWork.of(TABLES, job).weights().get(set)).isCloseTo(8 * 0.90765, within(1e-4));
        assertThat(job.temperatureF()).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void itemsStandBesideTheirJobs() {
        Source jobs = Source.of("jobs.csv", "job_id,method,openings,material_usd\nj,insert,2,900\n");
        Loaded<List<JobRecord>> read = JobReader.readWithItems(
                jobs,
                Source.of(ItemTable.FILE, "job_id,item_id,used_packages,paid_usd\nj,foam,0.5,6\nk,foam,1,9\n"),
                TABLES);
        List<JobRecord> records = read.orElseThrow();
        assertThat(records.get(0).money().items())
                .containsExactly(
                        new JobItem("foam", OptionalDouble.empty(), OptionalDouble.of(0.5), OptionalDouble.of(6)));
        assertThat(read.warnings())
                .extracting(Object::toString)
                .containsExactly("job-items.csv:3:job_id: \"k\" is not a job of jobs.csv; the item is left out");
        assertThat(ItemTable.text(records))
                .isEqualTo("job_id,item_id,estimated_packages,used_packages,paid_usd\nj,foam,,0.5,6\n");
    }

    @Test
    void anItemThatNobodyKnowsIsRefused() {
        Source jobs = Source.of("jobs.csv", "job_id,method,openings,person_hours\nj,insert,2,9\n");
        Source items = Source.of(ItemTable.FILE, "job_id,item_id,used_packages\nj,foma,1\n");
        assertThat(JobReader.readWithItems(jobs, items, TABLES).errors())
                .extracting(Object::toString)
                .singleElement()
                .asString()
                .startsWith("job-items.csv:2:item_id: \"foma\" is no item of materials.csv");
    }
}
