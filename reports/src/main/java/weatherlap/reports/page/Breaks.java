package weatherlap.reports.page;

/** Where a line may break within a word that has no place to break, such as a key of 200 letters. */
public final class Breaks {
    private static final int RUN = 16;
    private static final char ZERO_WIDTH_SPACE = '\u200B';

    private Breaks() {}

    /** The text with a zero-width space after each so many characters that hold no white space, hyphen or break of their own. */
    public static String in(String text) {
        StringBuilder broken = new StringBuilder(text.length());
        int run = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            run = Character.isWhitespace(c) || c == '-' || c == '\u202F' || c == ZERO_WIDTH_SPACE ? 0 : run + 1;
            if (run > RUN && !Character.isLowSurrogate(c)) {
                broken.append(ZERO_WIDTH_SPACE);
                run = 1;
            }
            broken.append(c);
        }
        return broken.toString();
    }
}
