/** Which options do commands share, and which values do they take? */
package weatherlap.reports.options;
