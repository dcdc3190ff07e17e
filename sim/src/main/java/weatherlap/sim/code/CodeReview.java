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
        List<RoomReview> rooms = rooms(geometries);
        boolean relief = relieves(scenario);
        List<List<CodeCheck>> today = today(geometries);
        geometries.forEach((method, own) -> reviews.put(method, of(own, rooms, today, relief)));
        return Collections.unmodifiableMap(reviews);
    }

    /**
     * Of a house whose openings are done by a method each.
     *
     * @param plan of every opening by its own
     */
    public static CodeReview of(
            Map<Method, List<OpeningGeometry>> geometries, List<OpeningGeometry> plan, Scenario scenario) {
        return of(plan, rooms(geometries), today(geometries), relieves(scenario));
    }

    /** What the rules asked of each window say of the unit that stands, whatever comes after it. */
    private static List<List<CodeCheck>> today(Map<Method, List<OpeningGeometry>> geometries) {
        return Each.of(geometries.values().iterator().next(), ResidentialCode::ofWindow);
    }

    private static boolean relieves(Scenario scenario) {
        return scenario.choice(Choice.ESCAPE_RULE).equals("replacement_clause");
    }

    private static List<RoomReview> rooms(Map<Method, List<OpeningGeometry>> geometries) {
        List<OpeningGeometry> openings = geometries.values().iterator().next();
        Map<Object, List<Integer>> byRoom = new LinkedHashMap<>();
        for (int o = 0; o < openings.size(); o++) {
            Optional<String> id = openings.get(o).opening().place().roomId();
            Object key = id.isPresent() ? id : (Object) o;
            byRoom.computeIfAbsent(key, k -> new ArrayList<>()).add(o);
        }
        return Each.of(List.copyOf(byRoom.values()), room -> RoomReview.of(room, geometries.values()));
    }

    private static CodeReview of(
            List<OpeningGeometry> openings, List<RoomReview> asked, List<List<CodeCheck>> today, boolean relief) {
        List<RoomChange> rooms = new ArrayList<>();
        for (RoomReview room : asked) {
            rooms.addAll(room.changes(openings, relief));
        }
        List<List<CodeChange>> byOpening = Each.of(openings, opening -> new ArrayList<>());
        for (RoomChange room : rooms) {
            for (int bearer : room.bearers()) {
                byOpening.get(bearer).add(room.change());
            }
        }
        for (int o = 0; o < openings.size(); o++) {
            byOpening.get(o).addAll(ResidentialCode.ofWindow(openings.get(o), today.get(o)));
        }
        return new CodeReview(rooms, byOpening);
    }
}
