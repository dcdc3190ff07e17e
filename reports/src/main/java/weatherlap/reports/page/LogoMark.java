package weatherlap.reports.page;

import weatherlap.datasets.shop.Logo;
import weatherlap.datasets.table.Xml;

/** The logo of a shop in a page or on a sheet: embedded, nothing is fetched. */
public final class LogoMark {
    private LogoMark() {}

    /**
     * Markup that is safe to stand in a page as it is, as large as fits; a page that shows dots must allow pictures from {@code data:}.
     *
     * @param widthPx most width, CSS px
     * @param heightPx most height, CSS px
     * @param name what the picture stands for, to those who do not see it: the name of the shop
     */
    public static String of(Logo logo, double widthPx, double heightPx, String name) {
        double scale = Math.min(widthPx / logo.widthPx(), heightPx / logo.heightPx());
        String size = "width=\"" + px(scale * logo.widthPx()) + "\" height=\"" + px(scale * logo.heightPx()) + "\"";
        if (logo instanceof Logo.Svg svg) {
            return "<svg xmlns=\"http://www.w3.org/2000/svg\" " + size + " viewBox=\"" + svg.viewBox()
                    + "\" role=\"img\" aria-label=\"" + Xml.escaped(name) + "\">" + svg.inner() + "</svg>";
        }
        Logo.Png png = (Logo.Png) logo;
        return "<img " + size + " alt=\"" + Xml.escaped(name) + "\" src=\"data:image/png;base64," + png.base64()
                + "\" />";
    }

    private static int px(double px) {
        return Math.max(1, (int) Math.floor(px));
    }
}
