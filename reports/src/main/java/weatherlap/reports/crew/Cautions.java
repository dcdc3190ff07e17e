package weatherlap.reports.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.code.LiftLimit;
import weatherlap.sim.geometry.UnitWeight;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.House;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.method.Method;

/** What can hurt at this house, and where to defer: rules named, never replaced. */
final class Cautions {
    private Cautions() {}

    static List<String> of(House house, Set<Method> methods, List<Window> windows, Scenario scenario) {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "This sheet does not replace training, license, the unit maker's instructions or the local code; where they differ,"
                        + " they go first.");
        cautions.add(lead(house));
        if (house.yearBuilt() < scenario.value(Scalar.ASBESTOS_UNTIL_YEAR)) {
            cautions.add(
                    "Asbestos: old siding, glazing putty, caulk, plaster and paper may hold it. Have it tested before it is disturbed; if"
                            + " in doubt, stop.");
        }
        if (house.cladding() == Cladding.BRICK_VENEER
                || house.cladding() == Cladding.STUCCO
                || house.cladding() == Cladding.FIBER_CEMENT) {
            cautions.add("Silica: cutting or grinding " + InWords.of(house.cladding())
                    + " makes dust that harms lungs. Water or a vacuum shroud, and a respirator: 29 CFR 1926.1153.");
        }
        cautions.add(falls(house, windows));
        cautions.add(weight(windows));
        if (methods.stream().anyMatch(Method::cutsReturns)) {
            cautions.add(
                    "Saw: no deeper than the depth in the table. Wires, pipes and studs stand behind; find them first. One cuts, one"
                            + " vacuums; eyes, ears and lungs covered.");
        }
        if (methods.stream().anyMatch(Method::hasFlange)
                && scenario.value(Scalar.TEMPERATURE_F) < scenario.value(Scalar.TAPE_WARM_F)) {
            cautions.add("Cold: planned for " + Numbers.plain(scenario.value(Scalar.TEMPERATURE_F), 0)
                    + " °F; below " + Numbers.plain(scenario.value(Scalar.TAPE_WARM_F), 0)
                    + " °F warm tape and wall until the tape sticks; cold vinyl breaks.");
        }
        named(
                        windows,
                        "a stain or soft wood was seen: open up, find the water and call the office before closing.",
                        w -> w.takeoff().opening().laps().stain() == Sighting.YES)
                .ifPresent(cautions::add);
        named(
                        windows,
                        "the frame is on record as rotten: mend it first, or do not set an insert there.",
                        w -> rotten(w) && w.method().keepsOldFrame())
                .ifPresent(cautions::add);
        named(
                        windows,
                        "the frame is on record as rotten: look how far the rot goes before closing.",
                        w -> rotten(w) && !w.method().keepsOldFrame())
                .ifPresent(cautions::add);
        cautions.add("Mold, nests, wet insulation or bad wiring behind the wall: stop, and follow local guidance.");
        return cautions;
    }

    private static boolean rotten(Window window) {
        return window.takeoff().opening().frame().rotten();
    }

    private static String lead(House house) {
        if (house.leadSafe()) {
            String known = house.leadTest() == LeadTest.POSITIVE ? "Lead paint was found" : "Lead paint is presumed";
            return "LEAD: " + known + " (built " + house.yearBuilt()
                    + ", before " + House.LEAD_UNTIL_YEAR + "). Replacing windows is renovation under 40 CFR"
                    + " 745: certified firm and renovator, signs, containment, no open flame or dry grinding, cleaning verified.";
        }
        return house.builtWithLead()
                ? "Lead: built " + house.yearBuilt()
                        + ", paint tested negative. Keep the test report with this sheet (40 CFR 745.82)."
                : "Lead: built " + house.yearBuilt() + ", after " + (House.LEAD_UNTIL_YEAR - 1)
                        + ". If older parts were reused, test them.";
    }

    private static String falls(House house, List<Window> windows) {
        double highestIn = windows.stream()
                .mapToDouble(w -> w.takeoff().opening().headHeightIn())
                .max()
                .orElse(0);
        return "Falls: the highest head is " + Numbers.plain(highestIn / 12, 0)
                + " ft up. From 6 ft on, fall protection by 29 CFR 1926.501;"
                + (house.storeys() > 1 ? " staging rather than ladders for setting units;" : "")
                + " ladder foot out a quarter of its working length (1926.1053), clear of power lines. An open opening is an edge: guard it"
                + " inside.";
    }

    /** The ideal lift and what is left of it away from the body, by the revised NIOSH equation. */
    private static String weight(List<Window> windows) {
        double limitLb = windows.stream()
                .mapToDouble(w -> w.takeoff().geometry().weight().limitLb())
                .min()
                .orElse(0);
        List<Window> heavy = windows.stream()
                .filter(w -> w.takeoff().geometry().weight().lift() != UnitWeight.Lift.ONE_PERSON)
                .toList();
        return "Weight and glass: the lift column allows one person less than " + Numbers.plain(limitLb, 0)
                + " lb, held close, on the ground floor. By the NIOSH lifting"
                + " equation " + reach(10) + " held 10 in. out become " + reach(15) + " at 15 and " + reach(20)
                + " at 20 in.; it is a guide for a good lift, no legal limit. "
                + (heavy.isEmpty()
                        ? "No unit wants more. "
                        : Window.list(heavy) + (heavy.size() == 1 ? " wants" : " want") + " two people or more. ")
                + "Gloves and sleeves; never under a hanging unit; tape cracked panes before they move.";
    }

    private static String reach(double reachIn) {
        return Numbers.plain(LiftLimit.recommendedLb(reachIn, 30, 10, 0, 1, 1), 0) + (reachIn == 10 ? " lb" : "");
    }

    private static Optional<String> named(List<Window> windows, String what, Predicate<Window> which) {
        List<Window> those = windows.stream().filter(which).toList();
        return those.isEmpty() ? Optional.empty() : Optional.of(Window.list(those) + ": " + what);
    }
}
