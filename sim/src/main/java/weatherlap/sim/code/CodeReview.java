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
        byOpening = List.copyOf(byOpening);
    }

    /** @param geometries of every opening of a house in table order, by method */
    public static Map<Method, CodeReview> of(Map<Method, List<OpeningGeometry>> geometries, Scenario scenario) {
        Today today = Today.of(geometries, scenario);
        Map<Method, CodeReview> reviews = new EnumMap<>(Method.class);
        today.after.forEach((method, units) -> reviews.put(method, today.reviewed(units)));
        return Collections.unmodifiableMap(reviews);
    }

    /**
     * Of a house whose openings are done by a method each.
     *
     * @param plan of every opening by its own
     */
    public static CodeReview of(
            Map<Method, List<OpeningGeometry>> geometries, List<OpeningGeometry> plan, Scenario scenario) {
        Today today = Today.of(geometries, scenario);
        return today.reviewed(today.after(plan));
    }

    /**
     * What the rules say of a house before the work, whatever comes.
     *
     * @param units that stand
     * @param after those that each method puts in their places
     * @param windows by opening, what the rules asked of each window say
     * @param relief whether the replacement clause holds
     */
    private record Today(
            List<Unit> units,
            Map<Method, List<Unit>> after,
            List<RoomReview> rooms,
            List<List<CodeCheck>> windows,
            boolean relief) {
        static Today of(Map<Method, List<OpeningGeometry>> geometries, Scenario scenario) {
            List<Unit> units = Each.of(geometries.values().iterator().next(), Unit::today);
            Map<Method, List<Unit>> after = new EnumMap<>(Method.class);
            geometries.forEach((method, own) -> after.put(method, after(units, own)));
            return new Today(
                    units,
                    after,
                    Each.of(rooms(units), room -> RoomReview.of(room, units, after.values())),
                    Each.of(units, ResidentialCode::ofWindow),
                    scenario.choice(Choice.ESCAPE_RULE).equals("replacement_clause"));
        }

        private static List<Unit> after(List<Unit> today, List<OpeningGeometry> geometries) {
            return Each.upTo(today.size(), o -> today.get(o).after(geometries.get(o)));
        }

        List<Unit> after(List<OpeningGeometry> geometries) {
            return after(units, geometries);
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
            CodeChange[][] byOpening = new CodeChange[after.size()][];
            for (RoomReview room : rooms) {
                List<RoomChange> changes = room.changes(after, relief);
                changed.addAll(changes);
                for (int opening : room.openings()) {
                    byOpening[opening] = at(opening, changes, after.get(opening));
                }
            }
            return new CodeReview(changed, Each.upTo(byOpening.length, o -> List.of(byOpening[o])));
        }

        private CodeChange[] at(int opening, List<RoomChange> room, Unit after) {
            List<CodeCheck> before = windows.get(opening);
            List<CodeCheck> checks = ResidentialCode.ofWindow(after);
            int borne = 0;
            for (RoomChange change : room) {
                borne += change.bearers().contains(opening) ? 1 : 0;
            }
            CodeChange[] changes = new CodeChange[borne + checks.size()];
            int count = 0;
            for (RoomChange change : room) {
                if (change.bearers().contains(opening)) {
                    changes[count++] = change.change();
                }
            }
            for (int rule = 0; rule < checks.size(); rule++) {
                changes[count++] = new CodeChange(before.get(rule), checks.get(rule), false);
            }
            return changes;
        }
    }
}
