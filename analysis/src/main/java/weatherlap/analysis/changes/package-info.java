/** Two sets of assumptions set side by side: which rows differ, and what does each change of a row do to the answer? */
package weatherlap.analysis.changes;
