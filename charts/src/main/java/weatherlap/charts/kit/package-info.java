/**
 * What are pictures made of? The face of every picture ({@link weatherlap.charts.kit.Picture}), its canvas and fonts, the
 * palette and type scale ({@link weatherlap.charts.kit.Tone}, {@link weatherlap.charts.kit.Theme}), axes, rows, roses and heat
 * maps, and the sign each method is known by. Says nothing of what a picture shows.
 */
package weatherlap.charts.kit;
