package weatherlap.datasets.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weatherlap.datasets.table.Quoted;

/** Values of the attributes of an SVG picture: each of a form of its own, of signs that need no escape. */
final class SvgValues {
    private static final String NUMBER = "[+-]?(?:\\d{1,9}\\.?\\d{0,20}|\\.\\d{1,20})(?:[eE][+-]?\\d{1,2})?";
    private static final String GAP = "[\\s,]*+";
    private static final Pattern ONE = Pattern.compile(NUMBER);
    private static final Pattern LENGTH = Pattern.compile("(" + NUMBER + ")(?:px|%)?");
    private static final Pattern ID = Pattern.compile("[A-Za-z_][A-Za-z0-9_.-]{0,60}");
    private static final Pattern COLOR = Pattern.compile("none|#[0-9a-fA-F]{3}|#[0-9a-fA-F]{6}"
            + "|black|silver|gray|white|maroon|red|purple|fuchsia|green|lime|olive|yellow|navy|blue|teal|aqua|orange"
            + "|rgb\\(\\s*\\d{1,3}\\s*,\\s*\\d{1,3}\\s*,\\s*\\d{1,3}\\s*\\)");
    private static final Pattern REFERENCE =
            Pattern.compile("url\\(\\s*[\"']?#([A-Za-z_][A-Za-z0-9_.-]{0,60})[\"']?\\s*\\)");
    private static final Pattern TRANSFORM =
            Pattern.compile("\\s*(matrix|translate|scale|rotate|skewX|skewY)\\s*\\(([^()]*)\\)[\\s,]*");
    private static final double LARGEST = 1e6;
    private static final String PREFIX = "logo-";

    private static final Set<String> COLORS = Set.of("fill", "stroke", "stop-color");
    private static final Set<String> SHARES = Set.of("opacity", "fill-opacity", "stroke-opacity", "stop-opacity");
    private static final Set<String> LENGTHS = Set.of(
            "x",
            "y",
            "width",
            "height",
            "rx",
            "ry",
            "cx",
            "cy",
            "r",
            "x1",
            "y1",
            "x2",
            "y2",
            "fx",
            "fy",
            "offset",
            "stroke-width",
            "stroke-miterlimit");
    private static final Map<String, Set<String>> WORDS = Map.of(
            "fill-rule", Set.of("nonzero", "evenodd"),
            "stroke-linecap", Set.of("butt", "round", "square"),
            "stroke-linejoin", Set.of("miter", "round", "bevel"),
            "gradientUnits", Set.of("userSpaceOnUse", "objectBoundingBox"),
            "spreadMethod", Set.of("pad", "reflect", "repeat"));
    private static final Map<String, List<Integer>> ARGUMENTS = Map.of(
            "matrix",
            List.of(6),
            "translate",
            List.of(1, 2),
            "scale",
            List.of(1, 2),
            "rotate",
            List.of(1, 3),
            "skewX",
            List.of(1),
            "skewY",
            List.of(1));

    private SvgValues() {}

    static boolean isPaint(String name) {
        return COLORS.contains(name)
                || SHARES.contains(name)
                || name.startsWith("stroke-") && isKnown(name)
                || name.equals("fill-rule");
    }

    static boolean isKnown(String name) {
        return COLORS.contains(name)
                || SHARES.contains(name)
                || LENGTHS.contains(name)
                || WORDS.containsKey(name)
                || Set.of("id", "d", "points", "transform", "gradientTransform").contains(name);
    }

    /**
     * The value as it may be written; empty where it may be left out.
     *
     * @param gradients that a color may refer to
     */
    static String checked(String name, String value, Set<String> gradients) throws LogoRefused {
        if (value.isEmpty() || value.equals("inherit") || value.equals("currentColor")) {
            return "";
        }
        return switch (name) {
            case "id" -> ID.matcher(value).matches() && gradients.contains(value) ? PREFIX + value : "";
            case "d" -> SvgPath.checked(value);
            case "points" -> points(value);
            case "transform", "gradientTransform" -> transform(name, value);
            default -> plain(name, value, gradients);
        };
    }

    private static String plain(String name, String value, Set<String> gradients) throws LogoRefused {
        if (COLORS.contains(name)) {
            return color(name, value, gradients);
        }
        if (WORDS.containsKey(name)) {
            return WORDS.get(name).contains(value) ? value : refuse(name, value);
        }
        Matcher length = LENGTH.matcher(value);
        boolean sane = length.matches() && isSane(length.group(1));
        boolean negative = sane && Double.parseDouble(length.group(1)) < 0;
        boolean mayBeNegative =
                Set.of("x", "y", "cx", "cy", "x1", "y1", "x2", "y2", "fx", "fy").contains(name);
        return sane && (!negative || mayBeNegative) ? value : refuse(name, value);
    }

    private static String color(String name, String value, Set<String> gradients) throws LogoRefused {
        Matcher reference = REFERENCE.matcher(value);
        if (reference.matches() && gradients.contains(reference.group(1))) {
            return "url(#" + PREFIX + reference.group(1) + ")";
        }
        if (!COLOR.matcher(value).matches()) {
            throw new LogoRefused("holds the color " + Quoted.of(value) + "; write colors as #rrggbb");
        }
        return value;
    }

    private static String points(String value) throws LogoRefused {
        return numbers(value).size() % 2 == 0 ? value.replaceAll("\\s+", " ") : refuse("points", value);
    }

    private static String transform(String name, String value) throws LogoRefused {
        Matcher each = TRANSFORM.matcher(value);
        int end = 0;
        while (end < value.length()) {
            boolean fits = each.find(end)
                    && each.start() == end
                    && ARGUMENTS
                            .get(each.group(1))
                            .contains(numbers(each.group(2)).size());
            if (!fits) {
                return refuse(name, value);
            }
            end = each.end();
        }
        return value.replaceAll("\\s+", " ");
    }

    /** Numbers between spaces and commas. */
    static List<Double> numbers(String text) throws LogoRefused {
        List<Double> numbers = new ArrayList<>();
        Matcher number = ONE.matcher(text);
        Matcher gap = Pattern.compile(GAP).matcher(text);
        int end = gap.lookingAt() ? gap.end() : 0;
        while (end < text.length()) {
            if (!number.find(end) || number.start() != end || !isSane(number.group())) {
                refuse("a list of numbers", text.substring(end));
            }
            numbers.add(Double.parseDouble(number.group()));
            gap.region(number.end(), text.length());
            end = gap.lookingAt() ? gap.end() : number.end();
        }
        return numbers;
    }

    static boolean isSane(String number) {
        return Math.abs(Double.parseDouble(number)) <= LARGEST;
    }

    /** A length in px; empty where it is none. */
    static OptionalDouble px(String value) {
        Matcher length = LENGTH.matcher(value.strip());
        return length.matches() && !value.contains("%")
                ? OptionalDouble.of(Double.parseDouble(length.group(1)))
                : OptionalDouble.empty();
    }

    static String refuse(String name, String value) throws LogoRefused {
        throw new LogoRefused("holds " + Quoted.of(value) + " as " + name + ", which SVG does not allow");
    }
}
