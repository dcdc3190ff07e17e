/**
 * What do people mean by what they typed? Small functions from the text of a cell to what it says: a length, a bearing, a word, an amount. Text
 * that could mean two things means nothing here and is left to be refused by its cell.
 */
package weatherlap.datasets.typed;
