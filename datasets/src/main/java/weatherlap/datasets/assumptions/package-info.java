/**
 * What is assumed? Reads the assumption tables, bundled or from a folder, by the same code; changes scalars; gives the tables back as
 * used, so that a run can be repeated.
 */
package weatherlap.datasets.assumptions;
