/** Randomness by name: a stream is its seed, its house, its opening and its purpose, so no draw ever shifts another. */
package weatherlap.sim.random;
