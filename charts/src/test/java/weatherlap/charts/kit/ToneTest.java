package weatherlap.charts.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.charts.report.Luminance;

/** The palette can be read by everyone, on paper and in grey. */
class ToneTest {

    /** A difference of 10 in CIELAB is plain to see at a glance; marks are small, so ask for much more. Judgement. */
    private static final double PLAIN_TO_SEE = 40;

    /**
     * Colours as seen with a missing cone, applied to linear components. Machado, Oliveira and Fernandes (2009), A
     * physiologically-based model for simulation of color vision deficiency, severity 1.0; from memory.
     */
    private enum Vision {
        ORDINARY(1, 0, 0, 0, 1, 0, 0, 0, 1),
        PROTANOPIA(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
        DEUTERANOPIA(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
        TRITANOPIA(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

        private final double[] matrix;

        Vision(double... matrix) {
            this.matrix = matrix;
        }

        double[] linear(Color color) {
            double[] from = {
                Luminance.linear(color.getRed()), Luminance.linear(color.getGreen()), Luminance.linear(color.getBlue())
            };
            double[] to = new double[3];
            for (int i = 0; i < 3; i++) {
                double sum = 0;
                for (int k = 0; k < 3; k++) {
                    sum += matrix[3 * i + k] * from[k];
                }
                to[i] = Math.max(0, Math.min(1, sum));
            }
            return to;
        }
    }

    /** Full-flange and full-frame stand side by side seldom, and then in other marks and lines; half the difference will do. */
    @ParameterizedTest
    @EnumSource
    void methodColoursStayApartForEveryEye(Vision vision) {
        assertThat(distance(vision, Tone.FULL_FLANGE, Tone.INSERT)).isGreaterThan(PLAIN_TO_SEE);
        assertThat(distance(vision, Tone.FULL_FRAME, Tone.INSERT)).isGreaterThan(PLAIN_TO_SEE);
        assertThat(distance(vision, Tone.FULL_FLANGE, Tone.FULL_FRAME)).isGreaterThan(PLAIN_TO_SEE / 2);
    }

    private static double distance(Vision vision, Tone one, Tone other) {
        double[] a = lab(vision.linear(one.color()));
        double[] b = lab(vision.linear(other.color()));
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }

    @ParameterizedTest
    @EnumSource
    void aMissingConeLeavesGreysGrey(Vision vision) {
        double[] grey = vision.linear(new Color(120, 120, 120));

        assertThat(grey[0]).isCloseTo(grey[1], Offset.offset(1e-5));
        assertThat(grey[1]).isCloseTo(grey[2], Offset.offset(1e-5));
    }

    @Test
    void methodColoursDifferInLightnessSoThatGreyPrintTellsThemApart() {
        assertThat(lightness(Tone.INSERT) - lightness(Tone.FULL_FLANGE)).isGreaterThan(30);
        assertThat(lightness(Tone.INSERT) - lightness(Tone.FULL_FRAME)).isGreaterThan(15);
        assertThat(lightness(Tone.FULL_FRAME) - lightness(Tone.FULL_FLANGE)).isGreaterThan(12);
    }

    private static double lightness(Tone tone) {
        return lab(Vision.ORDINARY.linear(tone.color()))[0];
    }

    @ParameterizedTest
    @EnumSource(names = {"INK", "MUTED", "FULL_FLANGE_TEXT", "FULL_FRAME_TEXT", "INSERT_TEXT"})
    void textCanBeReadOnEveryGround(Tone text) {
        for (Tone ground :
                new Tone[] {Tone.PAPER, Tone.FAINT, Tone.FULL_FLANGE_TINT, Tone.FULL_FRAME_TINT, Tone.INSERT_TINT}) {
            assertThat(Luminance.ratio(text.color(), ground.color()))
                    .as("%s on %s", text, ground)
                    .isGreaterThanOrEqualTo(Luminance.LEAST_FOR_TEXT);
        }
    }

    /** WCAG 2.1: black on white is 21:1; mid grey #767676 on white is the known limit of 4.5:1. */
    @Test
    void contrastIsThatOfTheStandard() {
        assertThat(Luminance.ratio(Color.BLACK, Color.WHITE)).isCloseTo(21, Offset.offset(1e-9));
        assertThat(Luminance.ratio(Color.WHITE, Color.BLACK)).isCloseTo(21, Offset.offset(1e-9));
        assertThat(Luminance.ratio(new Color(0x76, 0x76, 0x76), Color.WHITE)).isBetween(4.5, 4.6);
        assertThat(Luminance.ratio(new Color(0x77, 0x77, 0x77), Color.WHITE)).isLessThan(4.5);
    }

    /** CIE 1976 L*a*b* of linear sRGB, white point D65 (IEC 61966-2-1 for the matrix). */
    private static double[] lab(double[] rgb) {
        double x = (0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.9505;
        double y = 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
        double z = (0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.0890;
        return new double[] {116 * root(y) - 16, 500 * (root(x) - root(y)), 200 * (root(y) - root(z))};
    }

    private static double root(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }
}
