/**
 * What does a season hold: the days of the crews, the houses that wait, and what each way to choose a method makes of them?
 *
 * <p>A house takes whole days of a crew. The best mix gives each house that waits a method, a plan or no place in the season, so that the
 * shop's gross profit is the most that its crew days allow: a knapsack with one choice a house, solved exactly ({@link
 * weatherlap.analysis.season.CrewDays}).
 */
package weatherlap.analysis.season;
