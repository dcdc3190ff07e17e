package weatherlap.sim.code;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.code.ResidentialCode.Unit;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.method.Method;

/**
 * What the rules of {@link ResidentialCode} say of a house under one method, before and after. Escape, light and air are asked of rooms;
 * glazing and falls of each window. Without an id an opening is a room of its own, and nothing is said of its light and air.
 *
 * @param rooms rules asked of rooms, room by room in table order
 * @param byOpening what hangs on each opening, rules in their order
 */
public record CodeReview(List<RoomChange> rooms, List<List<CodeChange>> byOpening) {
    public CodeReview {
        rooms = List.copyOf(rooms);
        byOpening = Each.of(byOpening, List::copyOf);
    }

    /** @param geometries of every opening of a house in table order, by method */
    public static Map<Method, CodeReview> of(Map<Method, List<OpeningGeometry>> geometries, Scenario scenario) {
        Map<Method, CodeReview> reviews = new EnumMap<>(Method.class);
        Map<Method, List<Unit>> after = after(geometries);
        Today today = Today.of(geometries, after, scenario);
        after.forEach((method, units) -> reviews.put(method, today.reviewed(units)));
        return Collections.unmodifiableMap(reviews);
    }

    /**
     * Of a house whose openings are done by a method each.
     *
     * @param plan of every opening by its own
     */
    public static CodeReview of(
            Map<Method, List<OpeningGeometry>> geometries, List<OpeningGeometry> plan, Scenario scenario) {
        return Today.of(geometries, after(geometries), scenario).reviewed(Each.of(plan, Unit::after));
    }

    private static Map<Method, List<Unit>> after(Map<Method, List<OpeningGeometry>> geometries) {
        Map<Method, List<Unit>> after = new EnumMap<>(Method.class);
        geometries.forEach((method, own) -> after.put(method, Each.of(own, Unit::after)));
        return after;
    }

    /**
     * What the rules say of a house before the work, whatever comes.
     *
     * @param windows by opening, those asked of each window
     * @param relief whether the replacement clause holds
     */
    private record Today(List<RoomReview> rooms, List<List<CodeCheck>> windows, boolean relief) {
        static Today of(
                Map<Method, List<OpeningGeometry>> geometries, Map<Method, List<Unit>> after, Scenario scenario) {
            List<Unit> units = Each.of(geometries.values().iterator().next(), Unit::today);
            return new Today(
                    Each.of(rooms(units), room -> RoomReview.of(room, units, after.values())),
                    Each.of(units, ResidentialCode::ofWindow),
                    scenario.choice(Choice.ESCAPE_RULE).equals("replacement_clause"));
        }

        /** Openings by the room that they share. */
        private static List<List<Integer>> rooms(List<Unit> units) {
            Map<Object, List<Integer>> byRoom = new LinkedHashMap<>();
            for (int o = 0; o < units.size(); o++) {
                Optional<String> id = units.get(o).opening().place().roomId();
                Object key = id.isPresent() ? id : (Object) o;
                byRoom.computeIfAbsent(key, k -> new ArrayList<>()).add(o);
            }
            return List.copyOf(byRoom.values());
        }

        CodeReview reviewed(List<Unit> after) {
            List<RoomChange> changed = new ArrayList<>();
            for (RoomReview room : rooms) {
                changed.addAll(room.changes(after, relief));
            }
            List<List<CodeChange>> byOpening = Each.of(after, opening -> new ArrayList<>());
            for (RoomChange room : changed) {
                for (int bearer : room.bearers()) {
                    byOpening.get(bearer).add(room.change());
                }
            }
            for (int o = 0; o < after.size(); o++) {
                List<CodeCheck> checks = ResidentialCode.ofWindow(after.get(o));
                for (int rule = 0; rule < checks.size(); rule++) {
                    byOpening.get(o).add(new CodeChange(windows.get(o).get(rule), checks.get(rule), false));
                }
            }
            return new CodeReview(changed, byOpening);
        }
    }
}
