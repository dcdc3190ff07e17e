package weatherlap.analysis.calibration;

import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.LabourStep;

/**
 * A timing too far from the others of its step, or where there are none from the step's range, to be believed.
 *
 * @param job as read
 * @param minutes person-minutes of the step in the job, as read
 * @param expectedMinutes by the other timings and the range
 */
public record GrossTiming(JobRecord job, LabourStep step, double minutes, double expectedMinutes) {}
