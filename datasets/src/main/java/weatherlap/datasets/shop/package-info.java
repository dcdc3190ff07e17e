/** The shop as its sheets name it, the terms of its prices and its season: {@code shop.toml}. */
package weatherlap.datasets.shop;
