/**
 * What has to be bought? Items on drivers, in whole packages for a house, new units by united inches, and what the tip and the
 * permit cost.
 *
 * <pre>
 * u = Σ q · k · (1 + w)        units of stock that an item needs, waste in
 * n = ⌈u / z⌉                  packages bought for the house
 * C = n · p                    USD; an opening's share is q · k · (1 + w) / z · p, the rest of the last package is the house's
 *
 * symbol  meaning                        unit               code                        from
 * q       quantity of the driver         driver's unit      MaterialLine                geometry
 * k       stock for one of the driver    stock/driver       quantityPerDriver           materials.csv
 * w       waste                          1                  wasteFraction               materials.csv
 * z       stock in a package             stock              packageSize                 materials.csv
 * p       price of a package             USD                price                       materials.csv
 * </pre>
 *
 * <p>What is left in the last package is charged to the house that opened it; a shop that keeps half tubes for the next house
 * spends less. Prices of different items are independent.
 */
package weatherlap.sim.material;
