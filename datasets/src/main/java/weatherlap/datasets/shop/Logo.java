package weatherlap.datasets.shop;

import java.util.Base64;
import weatherlap.sim.Check;

/** A picture for the head of a sheet, cleaned: it runs nothing, refers to nothing outside itself and is of bounded size. */
public sealed interface Logo {
    /** Longest side of a picture, px. */
    int LONGEST_SIDE = 4000;

    int widthPx();

    int heightPx();

    /**
     * Dots.
     *
     * @param base64 of a PNG file that holds nothing but its picture
     */
    record Png(int widthPx, int heightPx, String base64) implements Logo {
        public Png {
            Check.text("base64", base64);
        }

        static Png of(int widthPx, int heightPx, byte[] png) {
            return new Png(widthPx, heightPx, Base64.getEncoder().encodeToString(png));
        }
    }

    /**
     * Lines and areas.
     *
     * @param viewBox of the root
     * @param inner elements of SVG to stand in a root of that view box; safe to stand in a page as they are
     */
    record Svg(int widthPx, int heightPx, String viewBox, String inner) implements Logo {
        public Svg {
            Check.text("viewBox", viewBox);
            Check.text("inner", inner);
        }
    }
}
