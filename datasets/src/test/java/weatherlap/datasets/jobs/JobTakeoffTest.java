package weatherlap.datasets.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.datasets.table.Source;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.work.WorkTakeoff;

class JobTakeoffTest {
    private static final Assumptions TABLES = AssumptionTables.bundled().assumptions();

    private static List<JobRecord> made(int count) {
        return new JobMaker(TABLES, MadeShop.drawn(TABLES, 0, 1), 0.15, 0, 5).jobs(count);
    }

    /** Every fourth frame is not kept; 2 in 9 of the others are worn and 1 in 9 is rotten, 4 jobs' worth of made-up houses beside. */
    @Test
    void aBlankFactCountsAsOftenAsItHoldsElsewhere() {
        List<JobRecord> kept = made(200);
        List<JobRecord> left = new ArrayList<>();
        for (int j = 0; j < kept.size(); j++) {
            left.add(j % 4 == 0 ? without(kept.get(j), Fact.FRAME_CONDITION) : kept.get(j));
        }
        JobTakeoff takeoff = new JobTakeoff(TABLES, left, JobHouses.unmeasured());
        double filled = 0;
        double told = 0;
        double ordinary = 0;
        for (int j = 0; j < kept.size(); j += 4) {
            assertThat(takeoff.filledIn(left.get(j))).containsExactly(Fact.FRAME_CONDITION);
            filled += takeoff.of(left.get(j)).expectedMinutes();
            told += JobWork.of(TABLES, kept.get(j)).expectedMinutes();
            ordinary += JobWork.of(TABLES, left.get(j)).expectedMinutes();
        }
        assertThat(ordinary / told).isLessThan(0.975);
        assertThat(filled / told).isCloseTo(1, within(0.02));
        assertThat(takeoff.of(left.get(0)).spread()).isBetween(0.05, 0.4);
        assertThat(takeoff.of(left.get(1)).spread()).isZero();
    }

    private static JobRecord without(JobRecord job, Fact fact) {
        Map<Fact, String> facts = new LinkedHashMap<>(job.facts());
        facts.remove(fact);
        return job.keeping(job.temperatureF(), job.personHours(), facts, job.stepMinutes());
    }

    /** Minutes of a whole measured house are those of a comparison, on the day's temperature, less the way there. */
    @Test
    void aMeasuredHouseIsTakenOff() {
        House house = DemoPortfolio.load().houses().get(0);
        JobRecord job = read("job_id,house_id,method,openings,temperature_f,person_hours\nj1," + house.id() + ",insert,"
                        + house.openingCount() + ",40,9\n")
                .get(0);
        Assumptions cold = TABLES.with(TABLES.scenario().with(Scalar.TEMPERATURE_F, 40));
        WorkTakeoff work = HouseTakeoff.work(house, Method.INSERT, cold);
        JobWork taken = new JobTakeoff(TABLES, List.of(job), JobHouses.of(List.of(house))).of(job);
        assertThat(taken.expectedMinutes())
                .isCloseTo(work.meanMinutes() - work.travel().value(), within(1e-6));
        assertThat(new JobTakeoff(TABLES, List.of(job), JobHouses.unmeasured())
                        .of(job)
                        .expectedMinutes())
                .isNotCloseTo(taken.expectedMinutes(), within(20.0));
    }

    /** Wide low windows: 60 ft of head and sill, 20 ft of jamb. The stand-in of 3 to 5 makes 30 ft of head of the same perimeter. */
    @Test
    void edgesThatWereMeasuredStandOverTheStandIn() {
        String head = "job_id,method,openings,cladding,perimeter_ft,head_ft,jamb_ft,sill_ft,glass_ft2\n";
        JobRecord kept =
                read(head + "j1,full_flange,10,vinyl_siding,140,60,20,60,77\n").get(0);
        JobRecord plain =
                read(head + "j1,full_flange,10,vinyl_siding,140,,,,\n").get(0);
        assertThat(weight(kept, "ff_head_tape") / weight(plain, "ff_head_tape"))
                .isCloseTo(60 / (140 * 3.0 / 16), within(1e-9));
        assertThat(weight(kept, "ff_tape") / weight(plain, "ff_tape")).isCloseTo(20 / (140 * 10.0 / 16), within(1e-9));
        assertThat(weight(kept, "ff_wipe") / weight(kept, "ff_clean")).isCloseTo(77 / 10.0, within(1e-9));
        JobRecord edges =
                read(head + "j1,full_flange,10,vinyl_siding,,60,20,60,\n").get(0);
        assertThat(weight(edges, "ff_bead")).isCloseTo(weight(kept, "ff_bead"), within(1e-9));
    }

    private static double weight(JobRecord job, String step) {
        return JobWork.of(TABLES, job).weights().entrySet().stream()
                .filter(e -> e.getKey().id().equals(step))
                .mapToDouble(Map.Entry<LabourStep, Double>::getValue)
                .findFirst()
                .orElseThrow();
    }

    private static List<JobRecord> read(String text) {
        return JobReader.read(Source.of("jobs.csv", text), TABLES).orElseThrow();
    }
}
