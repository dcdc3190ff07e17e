package weatherlap.reports.output;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** File names made from text that came in a table. */
public final class SafeName {
    private static final int LONGEST = 60;
    private static final Pattern PLAIN = Pattern.compile("[a-z0-9][a-z0-9._-]*");
    /** Names that some systems keep for devices, whatever their ending. */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul");

    private SafeName() {}

    /**
     * A name for one file or folder: letters, digits, point, hyphen and underscore. An id that is already such a name, in small
     * letters, stays as it is; any other is followed by part of its checksum, so that two ids never share a name.
     */
    public static String of(String id) {
        if (isPlain(id)) {
            return id;
        }
        StringBuilder name = new StringBuilder();
        id.codePoints().limit(LONGEST).forEach(c -> name.append(allowed(c) ? (char) c : '_'));
        String start = name.isEmpty() || name.charAt(0) == '.' || name.charAt(0) == '-' ? "x" + name : name.toString();
        return start.toLowerCase(Locale.ROOT) + "-" + Checksum.ofText(id).substring(0, 10);
    }

    /** Whether text can stand as one part of a path on any system. */
    static boolean isPlainPart(String part) {
        return part.length() <= 120 && isPart(part.toLowerCase(Locale.ROOT));
    }

    private static boolean isPlain(String id) {
        return id.length() <= LONGEST && isPart(id);
    }

    private static boolean isPart(String part) {
        return PLAIN.matcher(part).matches() && !part.endsWith(".") && !DEVICES.contains(part.split("\\.", 2)[0]);
    }

    private static boolean allowed(int c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '.' || c == '-' || c == '_';
    }
}
