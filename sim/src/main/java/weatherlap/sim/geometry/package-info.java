/**
 * What a measurer works out: how much glass, daylight and way out an opening has and keeps, what size to order, what to cut, how much of
 * everything it takes, and which siding comes down. {@link weatherlap.sim.geometry.OpeningGeometry} gathers it for an opening and a
 * method, {@link weatherlap.sim.geometry.SidingPlan} for a wall.
 *
 * <table>
 *   <caption>Where each equation stands</caption>
 *   <tr><th>question</th><th>class</th><th>rests on</th></tr>
 *   <tr><td>lites of a unit</td><td>{@link weatherlap.sim.geometry.Lites}</td><td>plane geometry, rows of sightlines.csv</td></tr>
 *   <tr><td>an opening as seen, piece by piece</td><td>{@link weatherlap.sim.geometry.Glass}</td><td>plane geometry</td></tr>
 *   <tr><td>net clear opening</td><td>{@link weatherlap.sim.geometry.ClearOpening}</td><td>plane geometry, losses by judgement</td></tr>
 *   <tr><td>code</td><td>{@link weatherlap.sim.code.ResidentialCode}</td><td>IRC 2018</td></tr>
 *   <tr><td>size to order, lean of jambs</td><td>{@link weatherlap.sim.geometry.OrderSize}, {@link
 *   weatherlap.sim.geometry.Squareness}</td><td>measuring guides</td></tr>
 *   <tr><td>weight and lifting</td><td>{@link weatherlap.sim.geometry.UnitWeight}, {@link weatherlap.sim.code.LiftLimit}</td>
 *   <td>EN 572-1, NIOSH 94-110</td></tr>
 *   <tr><td>returns, screws, tape, capping, sealant</td><td>{@link weatherlap.sim.geometry.CutBack}, {@link
 *   weatherlap.sim.geometry.Fastening}, {@link weatherlap.sim.geometry.Flashing}, {@link weatherlap.sim.geometry.Capping}, {@link
 *   weatherlap.sim.geometry.Quantities}</td><td>common practice, lengths and volumes exact</td></tr>
 *   <tr><td>courses and panels</td><td>{@link weatherlap.sim.geometry.SidingLayout}</td><td>makers' manuals</td></tr>
 * </table>
 *
 * <p>Lengths are in inches. Geometry is exact; what is uncertain is the rows it is fed: no published sightlines were found, and an inch
 * more or less of frame moves the glass of a small window by several per cent. Walls are rectangles with level courses from grade;
 * gables, bays and arched heads are outside the model.
 */
package weatherlap.sim.geometry;
