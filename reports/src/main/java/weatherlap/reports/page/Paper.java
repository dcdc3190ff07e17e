package weatherlap.reports.page;

import java.util.Locale;

/** Sizes of paper. */
public enum Paper {
    LETTER,
    A4;

    /** As CSS names it. */
    String css() {
        return name().toLowerCase(Locale.ROOT);
    }
}
