package weatherlap.reports.offer;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import weatherlap.analysis.plan.Limit;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

/**
 * What a family has ticked, as a line to write down: four signs that tell the windows of this house from those of others, then a letter
 * a window, in table order over the walls.
 */
public final class ChoiceLine {
    private static final Pattern FORM = Pattern.compile("[0-9A-Fa-f]{4}-[A-Za-z]*");

    private ChoiceLine() {}

    /** A line that is none of this house, and why. */
    public static final class Refused extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        Refused(String message) {
            super(message);
        }
    }

    /** The letter of a method. */
    static char letter(Method method) {
        return switch (method) {
            case FULL_FLANGE -> 'L';
            case FULL_FRAME -> 'F';
            case INSERT -> 'I';
        };
    }

    /** The signs before the letters: they hang on the keys of the house, its walls and windows. */
    static String signs(House house) {
        StringBuilder keys = new StringBuilder(house.id());
        house.elevations().forEach(wall -> {
            keys.append('\n').append(wall.id());
            wall.openings().forEach(opening -> keys.append('\t').append(opening.id()));
        });
        CRC32 sum = new CRC32();
        sum.update(keys.toString().getBytes(StandardCharsets.UTF_8));
        return "%04X".formatted(sum.getValue() & 0xFFFF);
    }

    /** Whether a line looks like one, of whatever house. */
    public static boolean isOne(String line) {
        return FORM.matcher(line.strip()).matches();
    }

    /** @param methods in table order over the walls */
    public static String of(House house, List<Method> methods) {
        StringBuilder line = new StringBuilder(signs(house)).append('-');
        methods.forEach(method -> line.append(letter(method)));
        return line.toString();
    }

    /**
     * The methods of a line, in table order over the walls.
     *
     * @param closed by window, what closes a method there
     * @throws Refused where it is of another house, of no known letter, or asks for what cannot be built
     */
    public static List<Method> parse(String line, House house, List<Map<Method, Set<Limit>>> closed) {
        String plain = line.strip().toUpperCase(Locale.ROOT);
        int dash = plain.indexOf('-');
        String letters = plain.substring(dash + 1);
        if (dash < 0 || !plain.substring(0, dash).equals(signs(house)) || letters.length() != house.openingCount()) {
            throw new Refused("this line was not made for the windows of house " + house.id()
                    + " as they are now: it must be " + signs(house) + "- and " + house.openingCount()
                    + " letters, as the page handout.html of this house gives it");
        }
        List<Method> methods = new ArrayList<>();
        for (int o = 0; o < letters.length(); o++) {
            Method method = method(letters.charAt(o));
            if (closed.get(o).containsKey(method)) {
                throw new Refused("window " + (o + 1) + " ("
                        + house.openings().toList().get(o).id() + ") cannot be done by " + method.label() + ": "
                        + closed.get(o).get(method).stream()
                                .map(Limit::words)
                                .sorted()
                                .reduce((a, b) -> a + "; " + b)
                                .orElse("it is closed there"));
            }
            methods.add(method);
        }
        return methods;
    }

    private static Method method(char letter) {
        for (Method method : Method.values()) {
            if (letter(method) == letter) {
                return method;
            }
        }
        throw new Refused("it holds the letter " + letter + ", which stands for no method");
    }
}
