/** What is it worth to measure what was taken as usual? Each default at both ends of its range, on the draws of the run. */
package weatherlap.analysis.unmeasured;
