/**
 * What did jobs take? Records that a shop keeps of finished jobs, and the work that stood behind each.
 *
 * <p>A record holds fewer quantities than a takeoff. What it leaves out is filled in as {@link weatherlap.datasets.jobs.JobQuantities}
 * says: from the openings, shaped 3 to 5, and from facts that hold for an ordinary job.
 */
package weatherlap.datasets.jobs;
