/** What do weather records say, and what of them is kept between runs of a study? */
package weatherlap.reports.weather;
