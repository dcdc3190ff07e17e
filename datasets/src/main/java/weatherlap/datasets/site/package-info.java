/** Where houses stand: the file of a site, and the weather stations near it. */
package weatherlap.datasets.site;
