/** What is not the same in two comparisons: inputs, assumptions by row, houses, and which row moved the answer by how much. */
package weatherlap.reports.diff;
