package weatherlap.reports.crew;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weatherlap.analysis.words.InWords;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;

/**
 * A window by the number that the sheet calls it.
 *
 * @param number from 1, in table order over the walls
 */
record Window(int number, OpeningTakeoff takeoff) {
    static List<Window> of(HouseTakeoff house) {
        return IntStream.range(0, house.openings().size())
                .mapToObj(i -> new Window(i + 1, house.openings().get(i)))
                .toList();
    }

    Method method() {
        return takeoff.geometry().method();
    }

    boolean on(Elevation wall) {
        return takeoff.elevation().id().equals(wall.id());
    }

    String mark() {
        return Integer.toString(number);
    }

    /** Wall, key and room: front W2, bedroom. */
    String name() {
        return takeoff.elevation().id() + " " + takeoff.opening().id() + ", "
                + InWords.of(takeoff.opening().place().room());
    }

    /** Those that are done by a method, for every method that some are done by. */
    static Map<Method, List<Window>> byMethod(List<Window> windows) {
        return windows.stream()
                .collect(Collectors.groupingBy(Window::method, () -> new EnumMap<>(Method.class), Collectors.toList()));
    }

    /** Windows 1, 2 and 5. */
    static String list(List<Window> windows) {
        List<String> marks = windows.stream().map(Window::mark).toList();
        return (marks.size() == 1 ? "Window " : "Windows ") + InWords.list(marks);
    }
}
