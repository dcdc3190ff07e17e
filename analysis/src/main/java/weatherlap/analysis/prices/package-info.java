/** What does the shop ask for a window and for a house, by method, size and story: a list to hang up? */
package weatherlap.analysis.prices;
