/**
 * How likely is leak damage at an opening within the years the family looks ahead, and which lap fault would do it?
 *
 * <p>Water that arrives at a joint meets a first line (sealant, capping, cladding or nothing), then a lap. It harms when the first line
 * lets it by AND a fault stands at the lap AND the wall keeps more than it can bear; any such path suffices (OR). An insert leaves the
 * existing faults in the wall and adds those of its own work; a full-flange job takes away the faults of the old unit and adds those of
 * its own.
 *
 * <pre>
 * x_f = W_j · a_f · ω                          litres a year through fault f were there no first line
 * s, f                                         share past the first line while sound, once failed
 * K   = max(0, share · x − dried)              litres kept in a year
 * h   = Φ(ln(K/m)/β)                           chance of damage in that year
 * Q   = 1 − E_T ∏_t (1 − h_t)                  within the horizon, over the year T in which the seal fails
 * P   = 1 − ∏_f (1 − p_f Q_f(x_f))             of the opening
 * θ_f ~ Beta(α, β), p_f = θ l/(θ l + (1 − θ) m)  quality shared by a house or a crew; l, m: what was seen at this opening
 * </pre>
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol<th>meaning<th>unit<th>code<th>source
 * <tr><td>W_j<td>water at the joint<td>L/year<td>OpeningExposure.litresPerYear<td>weatherlap.sim.rain
 * <tr><td>a_f<td>share that the fault admits<td>1<td>LapFault.admitted<td>judgement about Olsson 2017
 * <tr><td>ω<td>weather of the horizon, mean 1, lognormal<td>1<td>LeakCauses.weatherNormal<td>year spread of the climate
 * <tr><td>T<td>life of a seal, Weibull<td>years<td>WeibullLife<td>RILEM TC 190-SBJ
 * <tr><td>m, β<td>fragility<td>L/year, 1<td>Fragility<td>judgement, set to the survey below
 * <tr><td>θ<td>share of openings with the fault<td>1<td>SharedQuality<td>judgement
 * </table>
 *
 * <p>Everything here that is not an equation is judgement: how often faults stand has no published source, and the level of the whole is
 * set to a survey of walls on a very wet coast (problems in about 90 % of walls without overhang and 25 % under 24 in.) and to 35 to 48 %
 * of new windows that leaked somewhere. Ranks and differences between methods can be trusted more than levels. Not modelled: leaks
 * through the new unit itself, wind pressure by gust, water from above other than run-off, and the repair of one fault while another is
 * mended.
 */
package weatherlap.sim.laps;
