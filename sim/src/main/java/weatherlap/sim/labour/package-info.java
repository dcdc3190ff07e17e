/**
 * How long does it take? Steps on drivers, slowed or sped by the conditions of the house, and laid out over working days.
 *
 * <pre>
 * m_l  = q_l · μ_s · ∏ f                     mean of a line, person-minutes
 * M    = Σ_l m_l                             mean of an opening, a wall, a house
 * V    = Σ_s (Σ_{l of s} q_l · ∏ f)² · σ²_s  variance: the minutes of a step are one unknown, shared by all openings of a house
 *
 * symbol  meaning                                          unit           code                    from
 * q       quantity of the driver                           driver's unit  LabourLine.quantity     geometry
 * μ, σ²   mean and variance of a step's minutes            min, min²      ThreePoint              labour-steps.csv
 * f       cold, height, learning, lead-safe, short-handed  1              Pace                    scenario.toml
 * </pre>
 *
 * <p>Factors multiply: they are taken to act apart. Published evidence is for single factors only, so a cold day on a third storey
 * is the least sure corner. Crew minutes are person-minutes over the people in the crew: nobody waits for another.
 */
package weatherlap.sim.labour;
