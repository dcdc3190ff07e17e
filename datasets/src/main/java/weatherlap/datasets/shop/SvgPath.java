package weatherlap.datasets.shop;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The data of a path, held against their grammar.
 *
 * @see "Scalable Vector Graphics (SVG) 1.1, second edition, W3C: 8.3.9 The grammar for path data"
 */
final class SvgPath {
    private static final Pattern COMMAND = Pattern.compile("[MmLlHhVvCcSsQqTtAaZz]");
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:\\d{1,9}\\.?\\d{0,20}|\\.\\d{1,20})(?:[eE][+-]?\\d{1,2})?");
    private static final Pattern FLAG = Pattern.compile("[01]");
    private static final Pattern SPACE = Pattern.compile("[\\s,]*+");

    /** Numbers that each command takes, once or over and over. */
    private static final Map<Character, Integer> TAKES =
            Map.of('M', 2, 'L', 2, 'H', 1, 'V', 1, 'C', 6, 'S', 4, 'Q', 4, 'T', 2, 'A', 7, 'Z', 0);

    private final String data;
    private int at;

    private SvgPath(String data) {
        this.data = data;
    }

    /** The data, with single spaces. */
    static String checked(String data) throws LogoRefused {
        SvgPath path = new SvgPath(data.replaceAll("\\s+", " ").strip());
        path.check();
        return path.data;
    }

    private void check() throws LogoRefused {
        boolean first = true;
        while (at < data.length()) {
            char command = Character.toUpperCase(take(COMMAND).charAt(0));
            if (first && command != 'M') {
                SvgValues.refuse("the data of a path", data);
            }
            first = false;
            int takes = TAKES.get(command);
            skip();
            do {
                for (int i = 0; i < takes; i++) {
                    argument(command == 'A' && (i == 3 || i == 4));
                }
            } while (takes > 0
                    && at < data.length()
                    && !COMMAND.matcher(data.substring(at, at + 1)).matches());
        }
    }

    private void argument(boolean flag) throws LogoRefused {
        String text = take(flag ? FLAG : NUMBER);
        if (!SvgValues.isSane(text)) {
            SvgValues.refuse("the data of a path", text);
        }
        skip();
    }

    private String take(Pattern wanted) throws LogoRefused {
        Matcher found = wanted.matcher(data).region(at, data.length());
        if (!found.lookingAt()) {
            SvgValues.refuse("the data of a path", data.substring(at));
        }
        at = found.end();
        return found.group();
    }

    private void skip() {
        Matcher space = SPACE.matcher(data).region(at, data.length());
        at = space.lookingAt() ? space.end() : at;
    }
}
