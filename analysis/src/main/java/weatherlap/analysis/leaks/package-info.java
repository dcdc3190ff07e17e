/**
 * Why does one house leak, and how far can that be trusted? Its openings by bearing and storey under both methods, the lap faults whose
 * admitted share moves its score most, and what the choice between two ways to reckon shelter changes.
 */
package weatherlap.analysis.leaks;
