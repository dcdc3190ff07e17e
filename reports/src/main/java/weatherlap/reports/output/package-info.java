/** How do results reach the disk: a folder that appears whole or not at all, with a record of what it was made from? */
package weatherlap.reports.output;
