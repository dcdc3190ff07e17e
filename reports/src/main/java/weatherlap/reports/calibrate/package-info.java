/** Calibrations for people: what to do with the fitted rates, what they fit, what they leave over. */
package weatherlap.reports.calibrate;
