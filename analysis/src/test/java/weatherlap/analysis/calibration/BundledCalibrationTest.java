package weatherlap.analysis.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.jobs.JobReader;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobText;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.datasets.table.Source;
import weatherlap.sim.assumptions.Assumptions;

/** The bundled rows, of which totals alone cannot tell most apart, fitted to jobs of a known shop. */
class BundledCalibrationTest {
    private static final AssumptionTables BUNDLED = AssumptionTables.bundled();
    private static final Assumptions TABLES = BUNDLED.assumptions();

    private static Calibration calibration(int jobs) {
        MadeShop shop = MadeShop.drawn(TABLES, 0.1, 3);
        List<JobRecord> made = new JobMaker(TABLES, shop, 0.15, 0.1, 3).jobs(jobs);
        List<JobRecord> read = JobReader.read(Source.of("jobs.csv", JobText.of(made, TABLES)), TABLES)
                .orElseThrow();
        return Calibrator.calibrate(TABLES, read, CalibrationOptions.ORDINARY);
    }

    @Test
    void jobsFromAFileImproveWhatIsForeseen() {
        Calibration calibration = calibration(60);
        HeldOutError error = calibration.heldOut().orElseThrow();
        assertThat(error.fitted()).isLessThan(error.tables());
        assertThat(calibration.jobs()).hasSize(60);
        assertThat(calibration.noise()).isCloseTo(0.15, within(0.04));
    }

    @Test
    void theFittedFolderReadsAsAssumptions() {
        Calibration calibration = calibration(20);
        Assumptions written =
                BUNDLED.withSteps(calibration.calibrated().steps()).assumptions();
        assertThat(written.steps()).hasSameSizeAs(TABLES.steps());
        for (int s = 0; s < written.steps().size(); s++) {
            assertThat(written.steps().get(s).minutes().mean())
                    .isCloseTo(calibration.steps().get(s).fittedMinutes(), within(1e-3));
        }
    }
}
