/**
 * Which houses are asked about? Reads a portfolio folder (houses, elevations, openings) into the domain and writes it back.
 *
 * <p>A house is put together from its own rows alone, so that a portfolio can be read house by house as well as whole.
 */
package weatherlap.datasets.portfolio;
