/**
 * What do the results say? Turns simulated columns into summary tables and decisions: the default method, where it stops
 * being the better one, and which assumptions move it.
 */
package weatherlap.analysis;
