/** Which tables come out, and which columns have they? */
package weatherlap.analysis.catalogue;
