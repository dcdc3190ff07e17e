/**
 * How is a number, a length, a name or a list written? Plain American English, the same in every locale and in everything that is read:
 * $24,337; 5.4%; 35 1/2″; vinyl siding; one, two and three.
 */
package weatherlap.analysis.words;
