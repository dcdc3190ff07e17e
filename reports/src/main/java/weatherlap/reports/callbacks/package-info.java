/** The analyst's page on service calls: calls seen beside those expected, and the level of the leaks that they give. */
package weatherlap.reports.callbacks;
