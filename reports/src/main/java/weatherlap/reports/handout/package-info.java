/**
 * The homeowner's handout: what a family gains and gives up with each method, window by window, on two printed pages. It is put
 * together from results as one record of texts and pictures, which the templates lay out; a sentence that is the same for every house
 * stands in {@link weatherlap.reports.handout.Prose}.
 */
package weatherlap.reports.handout;
