package weatherlap.reports.crew;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.words.Inches;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

/**
 * The laps from below, each over the one before, so that water runs over every edge: pan or sill strip over the barrier below, unit,
 * jamb strips, head strip, head flap. The order is that of the DOE Building America guidance on flashing and of AAMA 2400 (Method A);
 * around a unit without a flange, where the barrier is not reached, the order is common practice, no source.
 */
final class LapOrder {
    private LapOrder() {}

    static List<String> of(House house, Method method, Scenario scenario) {
        return switch (method) {
            case FULL_FLANGE -> flanged(house, scenario);
            case FULL_FRAME -> sealed(house, scenario);
            case INSERT -> insert();
        };
    }

    private static List<String> flanged(House house, Scenario scenario) {
        String below = barrier(house.barrier());
        List<String> steps = new ArrayList<>();
        switch (house.barrier()) {
            case NONE ->
                steps.add(
                        "No barrier is on record. Look before anything goes on: where there is none, agree with the office on a"
                                + " strip of barrier around the opening, lapped under what stands above.");
            case UNKNOWN -> steps.add("Nobody has looked at the barrier. Look, and write down what is there.");
            case HOUSEWRAP, BUILDING_PAPER -> {}
        }
        steps.add("Head flap: cut the " + below
                + " at the head's two corners, fold the flap up and tack it out of the way.");
        steps.add("Sill: " + below
                + " below the opening flat and whole, 2″ lap or more on what is under it. Sill pan or sill strip"
                + " over it, " + Inches.text(scenario.value(Scalar.TAPE_TAIL_IN))
                + " past each side, turned up the jambs; roll it.");
        steps.add(bead(scenario));
        steps.add(
                "Unit: set it in the bead, shim, level the sill, plumb the jambs, measure both diagonals, then fasten in the order"
                        + " given beside.");
        steps.add("Jamb strips: over both side flanges and over the ends of the sill strip, "
                + Inches.text(scenario.value(Scalar.TAPE_TAIL_JAMB_IN)) + " past head and sill; roll them.");
        steps.add("Head strip: over the head flange and over the tops of both jamb strips, "
                + Inches.text(scenario.value(Scalar.TAPE_TAIL_HEAD_IN)) + " past each side; roll it.");
        steps.add("Head flap: last of all down over the head strip; tape its cut corners and every other cut.");
        steps.add("Look: every edge laps over the one below. Photograph all four sides before they are covered.");
        steps.add(
                house.cladding().hungInPanels()
                        ? "Siding: channel at jambs and head, under-sill trim at the sill, then every panel back by its letters, locked and nailed"
                                + " loose enough to slide. Weeps of the unit stay open."
                        : "Siding: head flashing over the casing, its back leg behind the barrier's flap; every board back by its letters, cut ends"
                                + " primed. Weeps of the unit stay open.");
        steps.add(
                "Inside, last: a third of the gap's depth of low-expansion foam or insulation, then a bead between unit and opening,"
                        + " all round; then the returns and the sill board.");
        return steps;
    }

    private static String barrier(Barrier barrier) {
        return switch (barrier) {
            case HOUSEWRAP -> "housewrap";
            case BUILDING_PAPER -> "building paper";
            case NONE, UNKNOWN -> "barrier";
        };
    }

    private static String bead(Scenario scenario) {
        return scenario.choice(Choice.SILL_FLANGE).equals("open")
                ? "Bead: behind the flange at both jambs and the head, without a gap. NONE behind the sill flange: it stays open to"
                        + " drain. (Authorities differ; this job is planned open.)"
                : "Bead: behind the flange on all four sides, without a gap, the sill too. (Authorities differ; this job is planned"
                        + " sealed, so the pan must drain another way.)";
    }

    private static List<String> sealed(House house, Scenario scenario) {
        String wall = house.cladding().inCourses() ? "siding" : "masonry";
        return List.of(
                "Joint: cut the old sealant, saw an old flange free behind the " + wall
                        + ", lift the unit out whole. The flashing"
                        + " above stays as it is: look at it and write down what is there.",
                "Sill: pan or sill strip, "
                        + Inches.text(scenario.value(Scalar.TAPE_TAIL_IN))
                        + " up each jamb where it cannot run past, its front edge over the sill of the wall or over the barrier below.",
                "Unit: no flange. Set it, shim, level the sill, plumb the jambs, measure both diagonals, then fasten in the order"
                        + " given beside.",
                "The barrier at jambs and head is not reached: this job does not mend its laps. The joint and the pan carry the water."
                        + " Say so to the owner.",
                "Backer rod all round, half as deep as the joint is wide; leave a way out for water at the sill.",
                "Joint: sealant at jambs and head, tooled; the sill last, its weeps open.",
                "Trim outside, sill piece first, then both legs, then the head piece over their tops, its back leg under what stands"
                        + " above. Bead trim to " + wall + " at head and legs; none under the sill piece.",
                "Look: the pan drains to the outside. Photograph the sill before it is covered.",
                "Inside, last: fill the gap, then a bead between unit and opening, all round; then trim and sill board back.");
    }

    private static List<String> insert() {
        return List.of(
                "Old frame: sashes, stops and hardware out. Probe sill and lower corners; soft wood or a stain stops the job until it"
                        + " is mended.",
                "Sill: clean and dry, sloping to the outside, old weeps free. Pack it level under the unit, not across its way out.",
                "Inner bead: on the stop side of both jambs and the head. At the sill only where the unit's maker asks for it.",
                "Unit: set it in the bead from below upwards, shim at the screws, level, plumb, measure both diagonals, then fasten in"
                        + " the order given beside.",
                "Gap: low-expansion foam, a third of the depth; none in the way out at the sill.",
                "Capping, sill piece first: hemmed, its front over the siding or the old sill's nose, ends turned up.",
                "Capping, both legs: over the upturned ends of the sill piece.",
                "Capping, head piece last: over the tops of both legs, its back leg under what stands above.",
                "Outside bead: capping to wall and capping to unit at head and legs. Under the sill's nose and at the weeps: none.",
                "Inside, last: stops, then a bead between stops and unit.",
                "The laps of the old frame to the barrier stay as they were: an insert does not mend them. Say so to the owner.");
    }
}
