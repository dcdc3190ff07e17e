/**
 * Which method is the default of the shop, and what turns that answer? Chooses for every house ({@link weatherlap.analysis.plan}),
 * searches a rule over the choices ({@link weatherlap.analysis.rule}), and says both in words and maps.
 */
package weatherlap.analysis.choice;
