package weatherlap.charts.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.io.ByteArrayInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FontsTest {

    /** Inches, times, at most, a half: what a drawing of a window is labelled with. */
    private static final String SIGNS = "42\u2033 \u00d7 36\u2033 \u2264 \u00bd Wm";

    @BeforeAll
    static void install() {
        Fonts.install();
    }

    @Test
    void java2dKnowsTheBundledFamilies() {
        assertThat(GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames())
                .contains(Fonts.FAMILY, Fonts.MONO_FAMILY);
    }

    @Test
    void theFontsOfTheMachineAreNotUsed() {
        assertThat(GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames())
                .containsOnly(
                        Fonts.FAMILY,
                        Fonts.MONO_FAMILY,
                        Font.DIALOG,
                        Font.DIALOG_INPUT,
                        Font.MONOSPACED,
                        Font.SANS_SERIF,
                        Font.SERIF);
    }

    @ParameterizedTest
    @EnumSource
    void bytesAreTheFaceTheyClaimToBe(Fonts.Face face) throws Exception {
        Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(face.bytes()));

        assertThat(font.getFamily()).isEqualTo(face.family());
        assertThat(font.getFontName().contains("Bold")).isEqualTo(face.weight() == 700);
        assertThat(font.getFontName().contains("Oblique")).isEqualTo(face.oblique());
    }

    /** DejaVu Sans has 2048 units to the em; its digits are 1303 units wide ({@code hmtx} table of the font). */
    @Test
    void digitsAreAsWideAsInTheFontFile() {
        Font font = new Font(Fonts.FAMILY, Font.PLAIN, 2048);
        FontRenderContext context = new FontRenderContext(null, true, true);

        assertThat(font.getStringBounds("0", context).getWidth()).isEqualTo(1303.0);
    }

    @ParameterizedTest
    @ValueSource(ints = {Font.PLAIN, Font.BOLD, Font.ITALIC})
    void logicalAndUnknownFontsDrawAsTheBundledOne(int style) {
        double bundled = advance(Fonts.FAMILY, style);

        assertThat(advance(Font.SANS_SERIF, style)).isEqualTo(bundled);
        assertThat(advance(Font.DIALOG, style)).isEqualTo(bundled);
        assertThat(advance("no such family", style)).isEqualTo(bundled);
        assertThat(advance(Font.MONOSPACED, style)).isEqualTo(advance(Fonts.MONO_FAMILY, style));
    }

    @Test
    void signsOfTheSheetsCanBeDrawn() {
        assertThat(new Font(Fonts.FAMILY, Font.PLAIN, 12).canDisplayUpTo(SIGNS)).isEqualTo(-1);
    }

    private static double advance(String family, int style) {
        FontRenderContext context = new FontRenderContext(null, true, true);
        return new TextLayout(SIGNS, new Font(family, style, 100), context).getAdvance();
    }

    @Test
    void theLicenceGoesWithTheFonts() {
        assertThat(Fonts.licence()).contains("Bitstream Vera", "Permission is hereby granted");
    }
}
