package weatherlap.reports.page;

import java.util.Locale;

/** What a sheet is printed on. Sizes as in CSS (ISO 216; ANSI/ASME Y14.1 size A). */
public enum Paper {
    LETTER(11 * 96, 8.5 * 96),
    A4(297 / 25.4 * 96, 210 / 25.4 * 96);

    /** Margin of a sheet across, on every side, CSS px. */
    private static final double MARGIN_PX = 0.5 * 96;

    private final double longPx;
    private final double shortPx;

    Paper(double longPx, double shortPx) {
        this.longPx = longPx;
        this.shortPx = shortPx;
    }

    /** As CSS and the command line write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Width between the margins of a sheet across, CSS px (1/96 in.). */
    public double acrossWidthPx() {
        return longPx - 2 * MARGIN_PX;
    }

    /** Height between the margins of a sheet across, CSS px. */
    public double acrossHeightPx() {
        return shortPx - 2 * MARGIN_PX;
    }
}
