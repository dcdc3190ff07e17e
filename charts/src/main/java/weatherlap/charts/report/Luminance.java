package weatherlap.charts.report;

import java.awt.Color;
import weatherlap.charts.kit.Tone;

/**
 * How well text stands out from its ground.
 *
 * <p>Contrast ratio (L₁ + 0.05) / (L₂ + 0.05), the lighter over the darker, with the relative luminance L = 0.2126 R +
 * 0.7152 G + 0.0722 B of the linear components. Source: WCAG 2.1, definitions of contrast ratio and relative luminance
 * (standard).
 */
public final class Luminance {

    /** Least ratio for text of ordinary size, level AA (WCAG 2.1, criterion 1.4.3). */
    public static final double LEAST_FOR_TEXT = 4.5;

    private Luminance() {}

    /** From 1 (the same colour) to 21 (black on white). */
    public static double ratio(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /** The tone of text, ink or paper, that stands out more from a ground. */
    public static Tone textOn(Color ground) {
        boolean dark = ratio(ground, Tone.PAPER.color()) > ratio(ground, Tone.INK.color());
        return dark ? Tone.PAPER : Tone.INK;
    }

    /** Relative luminance, 0 (black) to 1 (white). */
    public static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    /** Linear component, 0 to 1, of an sRGB component, 0 to 255. */
    public static double linear(int component) {
        double c = component / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
