/** The same houses under several sets of assumptions, on common draws: what moves, which plans change, and what a rule is worth elsewhere. */
package weatherlap.analysis.scenarios;
