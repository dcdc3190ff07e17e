package weatherlap.reports.cli;

/** Text for a terminal. */
final class Terminals {
    private Terminals() {}

    /** Without characters that steer a terminal, which text from a table might hold; line feeds stay. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.codePoints()
                .forEach(c -> plain.appendCodePoint(
                        c == '\n' || c == '\t' || !Character.isISOControl(c) && !isDirection(c) ? c : '\uFFFD'));
        return plain.toString();
    }

    /** Marks that turn the direction of what follows them. */
    private static boolean isDirection(int c) {
        return c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    }
}
