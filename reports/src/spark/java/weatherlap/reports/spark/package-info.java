/** {@code compare} over more houses than one machine is for, as a job of Apache Spark; compiled in the profile {@code spark} alone. */
package weatherlap.reports.spark;
