/** How are rows of a table too large for memory put in order? On disk, in compressed parts that are merged. */
package weatherlap.datasets.sorting;
