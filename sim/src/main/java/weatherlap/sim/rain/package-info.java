/**
 * How much wind-driven rain reaches a point of a wall? Hourly weather in; driving rain by bearing, and the water that arrives at each
 * joint of each opening, out.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>meaning</th><th>unit</th><th>in code</th><th>source</th></tr>
 * <tr><td>I_A</td><td>airfield annual index</td><td>L/(m² a)</td><td>{@link WallRain#isoLitresPerM2Year}</td><td>ISO 15927-3:2009</td></tr>
 * <tr><td>I_S</td><td>airfield spell index</td><td>L/m²</td><td>{@link WallRain#designSpellLitresPerM2}</td><td>the same</td></tr>
 * <tr><td>C_R, O, W</td><td>roughness, obstruction, wall</td><td></td><td>{@link Iso15927}</td><td>the same; O and W from memory</td></tr>
 * <tr><td>DRF</td><td>driving-rain factor</td><td>s/m</td><td>{@link Raindrop}</td><td>Best 1950; Dingle and Lee 1972</td></tr>
 * <tr><td>r_bv</td><td>design rain load</td><td>L/(m² h)</td><td>{@link Ashrae160}</td><td>ASHRAE 160</td></tr>
 * <tr><td>r_vb</td><td>rain on a wall</td><td>L/(m² h)</td><td>{@link Straube}</td><td>Straube, BSD-148, 2010</td></tr>
 * <tr><td>h</td><td>shelter line under an eave</td><td>m</td><td>{@link WallRain#share}</td><td>geometry</td></tr>
 * </table>
 *
 * <p>Where it holds: plain walls of low houses on level ground, in a climate of steady rain with wind. It does not claim places where
 * much of the rain comes in severe convective storms or as snow, and it counts snow as rain. The free field above a wall's corners and
 * edges, where more rain strikes, is not modelled. Missing hours are left out and counted ({@link RainCoverage}), never guessed. The
 * overhang is plain geometry: it holds a wall wholly dry above the shelter line, where measurement finds a protection that fades nearly
 * linearly from the top down (Ge, Chiu and Stathopoulos 2017); many hours of different slant bring that fading out in the annual sum.
 *
 * <p>How far off it is: against a survey of walls with problems by overhang (coastal British Columbia, 1996; none, to 300, to 600 mm and 24
 * in. as 1, 0.78, 0.56, 0.28 of the walls without one) the share of rain that passes the eave is 1, 0.88, 0.42, 0.27 at one storey and 1,
 * 0.96, 0.78, 0.70 at three, in a suburb: the same rank, near it on low walls, much wetter on high ones. Its rank of elevations agrees
 * with the risk score of E2/AS1 at a Spearman correlation of 0.86.
 */
package weatherlap.sim.rain;
