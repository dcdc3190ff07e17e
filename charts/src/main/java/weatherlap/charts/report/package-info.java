/** What does the comparison say in pictures? Money, risk, glass and labour of both methods, for the report of a portfolio. */
package weatherlap.charts.report;
