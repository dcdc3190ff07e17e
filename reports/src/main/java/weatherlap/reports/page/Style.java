package weatherlap.reports.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;

/** The style sheets of pages and printed sheets, with the palette and type of the pictures. */
public final class Style {
    private static final double SHEET_FIGURE_WIDTH_PX = 612;
    private static final double SHEET_FIGURE_HEIGHT_PX = 830;

    private Style() {}

    /** For a page on a screen, and for printing it. */
    public static String screen() {
        return filled(BundledText.of("screen.css"));
    }

    /** For a printed sheet: CSS 2.1. */
    public static String sheet() {
        return filled(BundledText.of("sheet.css"));
    }

    /** A picture so large that two of the usual height stand on a printed page under each other. */
    public static String onSheet(String svg) {
        return Fitted.in(SHEET_FIGURE_WIDTH_PX, SHEET_FIGURE_HEIGHT_PX, svg);
    }

    /**
     * For a crew's sheet, on paper across and on a screen.
     *
     * @param size of the paper, as CSS names it
     */
    public static String crewSheet(String size) {
        return filled(BundledText.of("crewsheet.css")).replace("#size", size);
    }

    /** For a handout on a screen: what it adds to {@link #screen}. */
    public static String handoutScreen() {
        return screen() + filled(BundledText.of("handout-screen.css"));
    }

    /**
     * For a printed handout: CSS 2.1.
     *
     * @param typePt size of the type, pt
     * @param drawingPx width that a drawing may take, CSS px
     * @param pageOf a page's number in the first place, how many there are in the second
     */
    public static String handoutSheet(Paper paper, double typePt, int drawingPx, String pageOf) {
        return filled(BundledText.of("handout-sheet.css")
                .replace(
                        "@page-of",
                        "\"" + pageOf.replace("{0}", "\" counter(page) \"").replace("{1}", "\" counter(pages) \"")
                                + "\"")
                .replace("@paper-size", paper.word())
                .replace("@type", typePt + "pt")
                .replace("@drawing", drawingPx + "px")
                .replace("@numbers", drawingPx + 6 + "px"));
    }

    /** The script that finds a house in a page. */
    public static String search() {
        return BundledText.of("find.js");
    }

    /** The script that adds up what a family has ticked. */
    public static String choose() {
        return BundledText.of("choose.js");
    }

    /** By which a page allows that script and no other: {@code sha256-…}, as Content Security Policy writes it. */
    public static String chooseHash() {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(choose().getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Puts the palette and the font in the places of their names: @ink, @full-flange-tint, @font. */
    private static String filled(String css) {
        String filled = css.replace("@fonts", Theme.FONT_STACK);
        Tone[] tones = Tone.values();
        // longer names first: @insert is the beginning of @insert-text
        java.util.Arrays.sort(
                tones, java.util.Comparator.comparing(tone -> -tone.name().length()));
        for (Tone tone : tones) {
            filled = filled.replace(
                    "@" + tone.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'), tone.hex());
        }
        return filled;
    }
}
