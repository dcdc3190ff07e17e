/**
 * What does it look like on the house? Drawings to scale, in inches, of a window before and after and of a wall with its
 * siding, for sheets that are held in the hand. One scale holds for all parts of a drawing; lengths are written as a tape
 * measure reads them.
 */
package weatherlap.charts.drawing;
