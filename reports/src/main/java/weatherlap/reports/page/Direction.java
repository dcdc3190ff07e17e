package weatherlap.reports.page;

/** Which way a text from a table reads, where the renderer does not find out by itself. */
public final class Direction {
    private Direction() {}

    /**
     * By the first letter that has a direction of its own (rule P2 of Unicode Standard Annex 9).
     *
     * @return {@code rtl}, or null for left to right, as a page leaves it out
     */
    public static String of(String text) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            byte direction = Character.getDirectionality(text.codePointAt(i));
            if (direction == Character.DIRECTIONALITY_LEFT_TO_RIGHT) {
                return null;
            }
            if (isRightToLeft(direction)) {
                return "rtl";
            }
        }
        return null;
    }

    private static boolean isRightToLeft(byte directionality) {
        return directionality == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || directionality == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }
}
