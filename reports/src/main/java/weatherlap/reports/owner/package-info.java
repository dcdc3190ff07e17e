/** What the owner of a shop reads first: the numbers of the two pages, in words, in one picture and for programs. */
package weatherlap.reports.owner;
