package weatherlap.charts.kit;

import java.awt.Color;

/**
 * The palette, the same on pictures, pages, printed sheets and in the workbook.
 *
 * <p>The method colours lie far apart in hue and in lightness, so that they stay apart for colour-blind readers and in
 * grey print; insert has a darker tone of its own for text, because its fill is too light to read on paper.
 */
public enum Tone {
    /** Text. */
    INK("#1F252B"),
    /** Text of second rank: units, notes. */
    MUTED("#56606A"),
    /** Rules and axes. */
    RULE("#8D969E"),
    /** Grid lines and borders. */
    LINE("#D3D8DC"),
    /** Ground of a table head or a panel. */
    FAINT("#F1F3F4"),
    PAPER("#FFFFFF"),
    FULL_FLANGE("#1B4F72"),
    FULL_FLANGE_TEXT("#1B4F72"),
    /** Ground behind something about full-flange. */
    FULL_FLANGE_TINT("#D3E1EB"),
    FULL_FRAME("#736A45"),
    FULL_FRAME_TEXT("#5F5736"),
    /** Ground behind something about full-frame. */
    FULL_FRAME_TINT("#E9E6D8"),
    INSERT("#E0942F"),
    INSERT_TEXT("#874A00"),
    /** Ground behind something about the insert. */
    INSERT_TINT("#FAE9D1");

    private final String hex;

    Tone(String hex) {
        this.hex = hex;
    }

    /** As in CSS: a hash and six hexadecimal digits. */
    public String hex() {
        return hex;
    }

    /** Six hexadecimal digits, as a workbook wants them. */
    public String rgb() {
        return hex.substring(1);
    }

    public Color color() {
        return Color.decode(hex);
    }
}
