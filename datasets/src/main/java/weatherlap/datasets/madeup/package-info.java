/** A made-up shop whose rates, crews, prices and leaks are known, and the records that it would have kept: to try fits on. */
package weatherlap.datasets.madeup;
