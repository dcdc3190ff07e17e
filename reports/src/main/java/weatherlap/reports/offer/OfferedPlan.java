package weatherlap.reports.offer;

import java.util.List;
import weatherlap.analysis.plan.Plan;
import weatherlap.sim.code.CodeRule;
import weatherlap.sim.code.RoomChange;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;

/**
 * One way to do the whole house that a family may sign.
 *
 * @param plan a method for each window
 * @param takeoff of the house so done
 * @param expectedLeaks windows at which leak damage is expected within the horizon
 * @param damageUsd mean of the leak damage that the family pays within it, USD
 */
public record OfferedPlan(Kind kind, Plan plan, HouseTakeoff takeoff, double expectedLeaks, double damageUsd) {
    /** Where a choice comes from. */
    public enum Kind {
        /** By the first of the two methods that are set side by side, wherever it can be built. */
        FIRST,
        /** Likewise by the second. */
        SECOND,
        /** The family's plan, window by window. */
        MIXED,
        /** What the family has ticked. */
        OWN
    }

    /** In table order over the walls. */
    public List<Method> methods() {
        return plan.byOpening();
    }

    public int days() {
        return takeoff.work().crewDays().days();
    }

    public int panelsDown() {
        return takeoff.panelsDown().stream().mapToInt(panels -> panels).sum();
    }

    public double glassFt2() {
        return geometries().stream()
                .mapToDouble(geometry -> geometry.replaced().glassFt2())
                .sum();
    }

    public double glassTodayFt2() {
        return geometries().stream()
                .mapToDouble(geometry -> geometry.existing().glassFt2())
                .sum();
    }

    /** Rooms that have a way out through a window today and will not, or cannot be sure of it. */
    public List<RoomChange> escapesLost() {
        return rooms(CodeRule.ESCAPE).stream()
                .filter(room -> room.change().worse())
                .toList();
    }

    /** What a rule of the code finds room by room. */
    public List<RoomChange> rooms(CodeRule rule) {
        return takeoff.rooms().stream()
                .filter(room -> room.change().rule() == rule)
                .toList();
    }

    private List<OpeningGeometry> geometries() {
        return takeoff.openings().stream()
                .map(HouseTakeoff.OpeningTakeoff::geometry)
                .toList();
    }
}
