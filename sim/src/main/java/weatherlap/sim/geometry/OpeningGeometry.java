package weatherlap.sim.geometry;

import java.util.List;
import java.util.Optional;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.quantity.OpeningQuantities;

/**
 * All that a measurer works out for one opening and one method.
 *
 * @param existing the unit that stands
 * @param replaced the unit that the method puts in
 * @param existingClear net clear opening of one existing unit
 * @param clear of one new unit
 * @param order size to order
 * @param weight of what is lifted in one piece
 * @param cutBack of the interior returns; empty where they stay
 * @param fastening along the flange; empty without one: such a unit is held by a few screws
 * @param flashing tape strips over the flange; none without one
 * @param capping over the old frame; none where it is out
 * @param quantities of every driver counted at an opening
 */
public record OpeningGeometry(
        Opening opening,
        Method method,
        Glass existing,
        Glass replaced,
        ClearOpening existingClear,
        ClearOpening clear,
        OrderSize order,
        UnitWeight weight,
        Optional<CutBack> cutBack,
        Optional<Fastening> fastening,
        Flashing flashing,
        Capping capping,
        OpeningQuantities quantities) {
    /** The geometry of an opening of a house under one method. */
    public static OpeningGeometry of(
            House house, Elevation elevation, Opening opening, Method method, Assumptions assumptions) {
        return each(house, elevation, opening, List.of(method), assumptions).get(0);
    }

    /** The same under some methods, in their order. */
    public static List<OpeningGeometry> each(
            House house, Elevation elevation, Opening opening, List<Method> methods, Assumptions assumptions) {
        Glass existing = Glass.existing(opening, assumptions);
        ClearOpening clear = ClearOpening.of(
                existing.units().get(0),
                assumptions.existingSightline(opening),
                opening.operation(),
                assumptions.scenario());
        int storey = house.storeyOf(elevation, opening);
        return Each.of(methods, method -> of(opening, method, existing, clear, storey, assumptions));
    }

    private static OpeningGeometry of(
            Opening opening,
            Method method,
            Glass existing,
            ClearOpening existingClear,
            int storey,
            Assumptions assumptions) {
        Scenario scenario = assumptions.scenario();
        OrderSize order = OrderSize.of(opening, method, assumptions);
        Sightline sightline = order.sightline();
        Glass replaced = Glass.replaced(opening, order, assumptions);
        Lites unit = replaced.units().get(0);
        ClearOpening clear = ClearOpening.of(unit, sightline, opening.newOperation(), scenario);
        Optional<Fastening> fastening = method.hasFlange() && order.fits()
                ? Optional.of(new Fastening(
                        order.overallWidthIn(),
                        order.heightIn(),
                        scenario.value(Scalar.FASTENER_SPACING_IN),
                        scenario.value(Scalar.FASTENER_EDGE_IN)))
                : Optional.empty();
        Flashing flashing = method.hasFlange() ? flashing(order, scenario) : Flashing.NONE;
        Capping capping = method.isCapped() ? capping(opening, scenario) : Capping.NONE;
        Optional<CutBack> cutBack = method.cutsReturns()
                ? Optional.of(CutBack.of(opening, sightline.depthIn(), scenario))
                : Optional.empty();
        return new OpeningGeometry(
                opening,
                method,
                existing,
                replaced,
                existingClear,
                clear,
                order,
                UnitWeight.of(replaced, method, storey, scenario),
                cutBack,
                fastening,
                flashing,
                capping,
                Quantities.of(order, replaced, cutBack, fastening, flashing, capping, scenario));
    }

    /** That of another opening, which differs in its place alone. */
    OpeningGeometry of(Opening other, boolean upstairs) {
        return new OpeningGeometry(
                other,
                method,
                existing,
                replaced,
                existingClear,
                clear,
                order,
                weight.carried(upstairs),
                cutBack,
                fastening,
                flashing,
                capping,
                quantities);
    }

    private static Flashing flashing(OrderSize order, Scenario scenario) {
        return Flashing.of(
                order.overallWidthIn(),
                order.heightIn(),
                scenario.value(Scalar.TAPE_TAIL_IN),
                scenario.value(Scalar.TAPE_TAIL_JAMB_IN),
                scenario.value(Scalar.TAPE_TAIL_HEAD_IN));
    }

    private static Capping capping(Opening opening, Scenario scenario) {
        return Capping.of(
                opening.frame().widthIn(),
                opening.frame().heightIn(),
                scenario.value(Scalar.COIL_STRETCH_OUT_IN),
                scenario.value(Scalar.COIL_STRETCH_OUT_SILL_IN),
                scenario.value(Scalar.COIL_TAIL_IN));
    }

    /** Screws along the flange, in the order they are driven; none without one. */
    public List<Fastening.Fastener> fasteners() {
        return fastening.map(Fastening::screws).orElse(List.of());
    }

    /** Whether there is a unit that goes in and shows glass. */
    public boolean hasUnit() {
        return order.fits() && replaced.glassIn2() > 0;
    }

    /** Glass that the new unit shows less than the old one, ft²; below 0 where it shows more. */
    public double glassLostFt2() {
        return existing.glassFt2() - replaced.glassFt2();
    }
}
