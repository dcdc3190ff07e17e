/**
 * What stands on a page, as records of texts, tables and pictures that the templates lay out. Numbers are already rounded and carry
 * their units; nothing here is computed.
 */
package weatherlap.reports.page;
