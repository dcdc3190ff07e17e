/**
 * What do the results look like? Each picture is a record of plain numbers, labels and units ({@link
 * weatherlap.charts.kit.Picture}) that says in words what it shows and draws itself as vectors in a last step, with fonts that
 * are bundled so that every machine draws the same. {@code report} and {@code study} hold the charts, {@code drawing} what is
 * drawn to scale, {@code kit} what all of them are made of.
 *
 * <p>Fractions stay fractions in the records and become percent in text. Full-flange is dark blue, a disc, a solid line;
 * the insert is ochre, a diamond, a dashed line, hatched: colour is never the only sign. {@link weatherlap.charts.kit.Tone} and
 * {@link weatherlap.charts.kit.Theme} hold the palette and the type scale for pages, sheets and the workbook too.
 */
package weatherlap.charts;
