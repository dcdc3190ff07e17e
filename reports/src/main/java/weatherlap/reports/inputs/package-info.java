/** What does a run read, is it sound as a whole, and what is to be said where it is not? */
package weatherlap.reports.inputs;
