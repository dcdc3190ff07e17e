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
        return text.codePoints()
                        .map(Character::getDirectionality)
                        .filter(d -> d == Character.DIRECTIONALITY_LEFT_TO_RIGHT || isRightToLeft(d))
                        .limit(1)
                        .anyMatch(Direction::isRightToLeft)
                ? "rtl"
                : null;
    }

    private static boolean isRightToLeft(int directionality) {
        return directionality == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || directionality == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }
}
