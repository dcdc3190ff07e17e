/** What a season holds, and the shop's price list. */
package weatherlap.reports.season;
