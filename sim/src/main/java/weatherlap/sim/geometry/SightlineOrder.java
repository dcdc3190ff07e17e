package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Product;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Operation;

/**
 * Whether the rows of {@code sightlines.csv} keep the order that is expected of them: an insert shows no more glass than a full-flange
 * unit in the same opening. For openings of every size it is enough that, each way,
 *
 * <pre>
 *   old frame + insert's deduction ≥ full-flange deduction − rough gap        (the insert is no larger)
 *   insert's frame, stiles, rails  ≥ those of the full-flange unit            (and hides no less)
 * </pre>
 *
 * for rounding down keeps the order of the sizes. The geometry does not force it: a slim insert in a thin steel frame may show more
 * than a heavy flanged unit, and where the table says so the results must.
 */
public final class SightlineOrder {
    private SightlineOrder() {}

    /** The operations of the new units that the rows let show more glass as an insert. */
    public static List<Operation> exceptions(Assumptions assumptions) {
        List<Operation> exceptions = new ArrayList<>();
        FrameMaterial material = assumptions.newUnitMaterial();
        for (Operation operation : Operation.values()) {
            Sightline flanged = assumptions.sightline(Product.FULL_FLANGE, material, operation);
            Sightline insert = assumptions.sightline(Product.INSERT, material, operation);
            if (stackWidthIn(insert, operation) < stackWidthIn(flanged, operation)
                    || stackHeightIn(insert, operation) < stackHeightIn(flanged, operation)
                    || mayBeLarger(insert, flanged, assumptions)) {
                exceptions.add(operation);
            }
        }
        return List.copyOf(exceptions);
    }

    /** Frame, stiles and meeting stile side by side across a unit, in. */
    static double stackWidthIn(Sightline sightline, Operation operation) {
        boolean meeting = Lites.count(operation) == 2 && !Lites.stacked(operation);
        return 2 * (sightline.jambIn() + sightline.stileIn()) + (meeting ? sightline.meetingRailIn() : 0);
    }

    /** Frame and rails one above another up a unit, in. */
    static double stackHeightIn(Sightline sightline, Operation operation) {
        return sightline.headIn()
                + sightline.sillIn()
                + sightline.topRailIn()
                + sightline.bottomRailIn()
                + (Lites.stacked(operation) ? sightline.meetingRailIn() : 0);
    }

    private static boolean mayBeLarger(Sightline insert, Sightline flanged, Assumptions assumptions) {
        double gapIn = assumptions.scenario().value(Scalar.ROUGH_GAP_IN);
        return assumptions.sightlines().stream()
                .filter(row -> row.product() == Product.EXISTING)
                .anyMatch(old ->
                        2 * old.jambIn() + insert.widthDeductionIn() < Math.max(0, flanged.widthDeductionIn() - gapIn)
                                || old.headIn() + old.sillIn() + insert.heightDeductionIn()
                                        < Math.max(0, flanged.heightDeductionIn() - gapIn));
    }
}
