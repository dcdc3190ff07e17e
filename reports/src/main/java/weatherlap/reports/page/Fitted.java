package weatherlap.reports.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Pictures as large as a sheet lets them be. */
public final class Fitted {
    private static final Pattern SIZE = Pattern.compile("(?<= )(width|height)=\"([0-9.]+)\"");

    private Fitted() {}

    /**
     * The picture, made larger or smaller until it fills the width or the height.
     *
     * @param svg a picture of {@code weatherlap.charts}, whose root states its width and height in CSS px
     * @param widthPx most width, CSS px
     * @param heightPx most height, CSS px
     */
    public static String in(double widthPx, double heightPx, String svg) {
        int end = svg.indexOf('>');
        Matcher sizes = SIZE.matcher(svg.substring(0, end));
        double scale = sizes.results()
                .mapToDouble(size ->
                        (size.group(1).equals("width") ? widthPx : heightPx) / Double.parseDouble(size.group(2)))
                .min()
                .orElseThrow(() -> new IllegalArgumentException("The picture states no size."));
        return sizes.replaceAll(size ->
                        size.group(1) + "=\"" + (int) Math.floor(scale * Double.parseDouble(size.group(2))) + "\"")
                + svg.substring(end);
    }
}
