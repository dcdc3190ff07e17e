package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.List;
import weatherlap.reports.format.Printable;
import weatherlap.reports.words.FamilyWords;

/**
 * How a handout shares its room: how large the type and the drawings are, how many kinds of window are drawn and how many only listed.
 *
 * @param name class of the page that lays the columns out
 * @param typePt size of the type, pt
 * @param drawingWidthPx largest width of a drawing, CSS px
 * @param drawingHeightPx largest height of a drawing, CSS px
 * @param viewPx largest height of the window that is shown large, CSS px
 * @param drawn most kinds that are drawn
 * @param listed most kinds that are listed below them
 * @param bounded whether long texts are cut, as they must be on paper
 * @param shortWalls whether a wall is named by its direction alone
 */
public record Density(
        String name,
        double typePt,
        int drawingWidthPx,
        int drawingHeightPx,
        int viewPx,
        int drawn,
        int listed,
        boolean bounded,
        boolean shortWalls) {
    /** A page that scrolls holds everything. */
    static final Density SCREEN = new Density("screen", 12, 56, 50, 300, Integer.MAX_VALUE, 0, false, false);

    private static final int LONGEST_KEY = 24;
    private static final int LONGEST_KEY_WHERE_CLOSE = 8;
    private static final int[] FEWER_LISTED = {24, 20, 16, 13, 10, 7, 4, 2, 0};
    private static final int MOST_DRAWN = 24;
    private static final int MOST_DRAWN_SMALL = 11;
    private static final int LIST_VIEW_PX = 150;

    /** For paper, from the roomiest that may do for so many kinds to the tightest. */
    static List<Density> forPaper(int kinds) {
        List<Density> ladder = new ArrayList<>();
        if (kinds <= 4) {
            ladder.add(new Density("large", 11, 62, 80, 250, kinds, 0, true, false));
        }
        if (kinds <= 6) {
            ladder.add(new Density("roomy", 10.5, 58, 64, 230, kinds, 0, true, false));
            ladder.add(new Density("roomy", 10, 56, 50, 210, kinds, 0, true, false));
        }
        if (kinds <= 8) {
            ladder.add(new Density("close", 10, 52, 40, 190, kinds, 0, true, true));
        }
        if (kinds <= 11) {
            ladder.add(new Density("close", 9.5, 50, 32, 170, kinds, 0, true, true));
        }
        if (kinds <= MOST_DRAWN) {
            ladder.add(new Density("close", 9, 48, 26, 160, kinds, 0, true, true));
        }
        if (kinds <= MOST_DRAWN_SMALL) {
            ladder.add(new Density("close bare small", 9, 44, 22, 130, kinds, 0, true, true));
        }
        ladder.add(list("close list", LIST_VIEW_PX, kinds));
        ladder.add(list("close list bare", 100, kinds));
        ladder.add(list("close list bare split", 100, kinds));
        for (int listed : FEWER_LISTED) {
            if (listed < kinds) {
                ladder.add(list("close list bare split", 100, listed));
            }
        }
        return ladder;
    }

    /** Where the search for a layout begins: most houses come out at the first whose large window is no larger than a list's, or beside it. */
    static int likely(List<Density> ladder) {
        return (int) ladder.stream()
                .takeWhile(density -> density.viewPx() > LIST_VIEW_PX)
                .count();
    }

    private static Density list(String name, int viewPx, int listed) {
        return new Density(name, 9, 48, 28, viewPx, 0, listed, true, true);
    }

    /** Characters of a wall's or window's key. */
    int longestKey() {
        return shortWalls ? LONGEST_KEY_WHERE_CLOSE : LONGEST_KEY;
    }

    /** The text, on paper in letters that its font has. */
    String printed(String text) {
        return bounded ? Printable.of(text) : text;
    }

    /** The text, or what of it so many characters hold; on paper in letters that its font has. */
    String cut(String text, int characters) {
        String printed = printed(text);
        return !bounded || printed.codePointCount(0, printed.length()) <= characters
                ? printed
                : printed.substring(0, printed.offsetByCodePoints(0, characters - 1))
                                .stripTrailing() + "\u2026";
    }

    /** The words with commas; where there are more than so many, the first ones and how many more. */
    String some(List<String> names, int most, FamilyWords words) {
        return !bounded || names.size() <= most
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, most)) + " "
                        + words.of("and.more", Integer.toString(names.size() - most));
    }
}
