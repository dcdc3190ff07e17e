package weatherlap.reports.crew;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a sheet is printed on, across. Sizes as in CSS (ISO 216; ANSI/ASME Y14.1 size A). */
public enum Paper {
    LETTER(11 * 96, 8.5 * 96),
    A4(297 / 25.4 * 96, 210 / 25.4 * 96);

    /** Margin on every side, CSS px. */
    private static final double MARGIN_PX = 0.5 * 96;

    private final double widthPx;
    private final double heightPx;

    Paper(double widthPx, double heightPx) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
    }

    public static Optional<Paper> of(String word) {
        return Arrays.stream(values())
                .filter(paper -> paper.word().equals(word))
                .findFirst();
    }

    /** As CSS and the command line write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Between the margins, CSS px (1/96 in.). */
    double innerWidthPx() {
        return widthPx - 2 * MARGIN_PX;
    }

    /** Between the margins, CSS px. */
    double innerHeightPx() {
        return heightPx - 2 * MARGIN_PX;
    }
}
