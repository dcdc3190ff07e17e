package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.List;

/**
 * How a handout shares its room: how large the type and the drawings are, how many kinds of window are drawn and how many only listed.
 *
 * @param name class of the page that lays the columns out
 * @param typePt size of the type, pt
 * @param drawingWidthPx largest width of a drawing, CSS px
 * @param drawingHeightPx largest height of a drawing, CSS px
 * @param drawn most kinds that are drawn
 * @param listed most kinds that are listed below them
 * @param bounded whether long texts are cut, as they must be on paper
 * @param shortWalls whether walls are named by the letters of the compass
 */
public record Density(
        String name,
        double typePt,
        int drawingWidthPx,
        int drawingHeightPx,
        int drawn,
        int listed,
        boolean bounded,
        boolean shortWalls) {
    /** A page that scrolls holds everything. */
    static final Density SCREEN = new Density("screen", 12, 56, 50, Integer.MAX_VALUE, 0, false, false);

    private static final int LONGEST_KEY = 24;
    private static final int LONGEST_KEY_WHERE_CLOSE = 8;
    private static final int[] FEWER_DRAWN = {20, 16, 14, 12, 10, 8, 6, 4};
    private static final int[] FEWER_LISTED = {30, 24, 20, 16, 13, 10, 7, 4, 2, 0};

    /** For paper, from the roomiest that may do for so many kinds to the tightest. */
    static List<Density> forPaper(int kinds) {
        List<Density> ladder = new ArrayList<>();
        if (kinds <= 5) {
            ladder.add(new Density("large", 11, 62, 80, kinds, 0, true, false));
        }
        if (kinds <= 8) {
            ladder.add(new Density("roomy", 10.5, 58, 64, kinds, 0, true, false));
        }
        if (kinds <= 11) {
            ladder.add(new Density("roomy", 10, 56, 50, kinds, 0, true, false));
        }
        if (kinds <= 11) {
            ladder.add(new Density("close", 10, 52, 40, kinds, 0, true, true));
            ladder.add(new Density("close", 9.5, 50, 36, kinds, 0, true, true));
        }
        if (kinds <= 24) {
            ladder.add(close(kinds, 0));
        }
        for (int drawn : FEWER_DRAWN) {
            if (drawn < kinds) {
                ladder.add(close(drawn, kinds - drawn));
            }
        }
        for (int listed : FEWER_LISTED) {
            ladder.add(close(FEWER_DRAWN[FEWER_DRAWN.length - 1], listed));
        }
        return ladder;
    }

    private static Density close(int drawn, int listed) {
        return new Density("close", 9, 48, 28, drawn, listed, true, true);
    }

    /** Characters of a wall's or window's key. */
    int longestKey() {
        return shortWalls ? LONGEST_KEY_WHERE_CLOSE : LONGEST_KEY;
    }

    /** The text, or what of it so many characters hold. */
    String cut(String text, int characters) {
        return !bounded || text.codePointCount(0, text.length()) <= characters
                ? text
                : text.substring(0, text.offsetByCodePoints(0, characters - 1)).stripTrailing() + "\u2026";
    }

    /** The words with commas; where there are more than so many, the first ones and how many more. */
    String some(List<String> words, int most) {
        return !bounded || words.size() <= most
                ? String.join(", ", words)
                : String.join(", ", words.subList(0, most)) + " and " + (words.size() - most) + " more";
    }
}
