/** Every word of a family's sheet, in one bundle of messages for each language, and how sizes, money and places are said with them. */
package weatherlap.reports.words;
