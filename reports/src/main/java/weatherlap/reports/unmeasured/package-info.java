/** What is told of houses that a short table gave: what was taken as usual, and what it is worth to measure it. */
package weatherlap.reports.unmeasured;
