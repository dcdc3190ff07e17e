package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import weatherlap.analysis.words.InWords;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;

/**
 * A method for every opening of a house, as a line that a person writes and reads: a method for all, openings with a method of their
 * own, or both, as {@code insert,front/W1=full_flange}. An opening is named by wall and key, or by its key alone where no other has it.
 */
public final class PlanLine {
    private PlanLine() {}

    /**
     * The methods, in table order over the walls.
     *
     * @throws IllegalArgumentException with a sentence that says what is wrong with the line
     */
    public static List<Method> parse(String line, House house) {
        Map<String, List<Integer>> places = places(house);
        List<Method> methods = new ArrayList<>(Collections.nCopies(house.openingCount(), null));
        List<Method> others = new ArrayList<>();
        for (String item : line.split(",", -1)) {
            int equals = item.lastIndexOf('=');
            Method method = method(item.substring(equals + 1), line);
            if (equals < 0) {
                others.add(method);
            } else {
                int place = place(item.substring(0, equals).strip(), places, house);
                if (methods.set(place, method) != null) {
                    throw new IllegalArgumentException("the opening \"" + item + "\" is named twice");
                }
            }
        }
        return filled(methods, others, house);
    }

    /** The line of some methods, in table order over the walls: what {@link #parse} reads as these. */
    public static String of(House house, List<Method> methods) {
        Map<Method, Long> counts =
                methods.stream().collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        Method most = Arrays.stream(Method.values())
                .max(Comparator.comparing((Method method) -> counts.getOrDefault(method, 0L))
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
        StringBuilder line = new StringBuilder(most.word());
        int o = 0;
        for (Elevation wall : house.elevations()) {
            for (Opening opening : wall.openings()) {
                Method own = methods.get(o++);
                if (own != most) {
                    line.append(',').append(name(wall, opening)).append('=').append(own.word());
                }
            }
        }
        return line.toString();
    }

    private static String name(Elevation wall, Opening opening) {
        return wall.id() + "/" + opening.id();
    }

    /** What each opening may be called, and those that are called so. */
    private static Map<String, List<Integer>> places(House house) {
        Map<String, List<Integer>> places = new LinkedHashMap<>();
        int o = 0;
        for (Elevation wall : house.elevations()) {
            for (Opening opening : wall.openings()) {
                for (String name : Set.of(opening.id(), name(wall, opening))) {
                    places.computeIfAbsent(name, none -> new ArrayList<>()).add(o);
                }
                o++;
            }
        }
        return places;
    }

    private static int place(String name, Map<String, List<Integer>> places, House house) {
        List<Integer> found = places.getOrDefault(name, List.of());
        if (found.size() != 1) {
            String known = String.join(", ", names(house));
            throw new IllegalArgumentException(
                    (found.isEmpty() ? "no opening \"" : "more than one opening \"") + name + "\"; there are " + known);
        }
        return found.get(0);
    }

    private static Method method(String word, String line) {
        String name = word.strip().toUpperCase(Locale.ROOT).replace('-', '_');
        return Arrays.stream(Method.values())
                .filter(method -> method.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "\"" + word.strip() + "\" in \"" + line + "\" must be " + words()));
    }

    /** full_flange, full_frame or insert. */
    private static String words() {
        List<String> words = Arrays.stream(Method.values()).map(Method::word).toList();
        int last = words.size() - 1;
        return String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    private static List<Method> filled(List<Method> methods, List<Method> others, House house) {
        if (others.size() > 1) {
            throw new IllegalArgumentException("two methods for all openings: "
                    + others.get(0).word() + " and " + others.get(1).word());
        }
        if (others.isEmpty() && methods.contains(null)) {
            List<String> names = names(house);
            TreeSet<Integer> left = new TreeSet<>();
            for (int o = 0; o < names.size(); o++) {
                if (methods.get(o) == null) {
                    left.add(o);
                }
            }
            throw new IllegalArgumentException("no method for "
                    + InWords.list(left.stream().map(names::get).toList()));
        }
        return methods.stream()
                .map(method -> method == null ? others.get(0) : method)
                .toList();
    }

    private static List<String> names(House house) {
        return house.elevations().stream()
                .flatMap(wall -> wall.openings().stream().map(opening -> name(wall, opening)))
                .toList();
    }
}
