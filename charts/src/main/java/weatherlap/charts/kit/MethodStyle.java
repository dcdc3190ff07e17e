package weatherlap.charts.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import weatherlap.sim.method.Method;

/** How a method looks: its colour, and a shape, line and hatch that tell the methods apart where colour does not. */
public enum MethodStyle {
    FULL_FLANGE(Method.FULL_FLANGE.label(), Tone.FULL_FLANGE, Tone.FULL_FLANGE_TEXT, Tone.FULL_FLANGE_TINT, false),
    FULL_FRAME(Method.FULL_FRAME.label(), Tone.FULL_FRAME, Tone.FULL_FRAME_TEXT, Tone.FULL_FRAME_TINT, false),
    INSERT(Method.INSERT.label(), Tone.INSERT, Tone.INSERT_TEXT, Tone.INSERT_TINT, true);

    private final String label;
    private final Tone fill;
    private final Tone text;
    private final Tone tint;
    private final boolean hatched;

    MethodStyle(String label, Tone fill, Tone text, Tone tint, boolean hatched) {
        this.label = label;
        this.fill = fill;
        this.text = text;
        this.tint = tint;
        this.hatched = hatched;
    }

    public static MethodStyle of(Method method) {
        return switch (method) {
            case FULL_FLANGE -> FULL_FLANGE;
            case FULL_FRAME -> FULL_FRAME;
            case INSERT -> INSERT;
        };
    }

    /** The method's name as text uses it, in lower case. */
    public String label() {
        return label;
    }

    /** Colour of lines, marks and areas. */
    public Tone fill() {
        return fill;
    }

    /** Colour of text about the method on {@link Tone#PAPER}. */
    public Tone text() {
        return text;
    }

    /** Colour of a ground behind text about the method. */
    public Tone tint() {
        return tint;
    }

    /** Whether areas carry oblique lines. */
    public boolean hatched() {
        return hatched;
    }

    public Color color() {
        return fill.color();
    }

    /** Solid for full-flange, dotted for full-frame, dashed for insert. */
    public Stroke line() {
        return switch (this) {
            case FULL_FLANGE -> Theme.stroke(2f);
            case FULL_FRAME -> Theme.stroke(2f, 2f, 3f);
            case INSERT -> Theme.stroke(2f, 7f, 3.5f);
        };
    }

    /** A solid line in the method's colour, for ranges, which the shape of the mark tells apart. */
    public Stroke range() {
        return new BasicStroke(2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }

    /** A disc for full-flange, a square for full-frame, a diamond for insert, centred on (0, 0). */
    public Shape mark() {
        return switch (this) {
            case FULL_FLANGE -> new Ellipse2D.Double(-4.5, -4.5, 9, 9);
            case FULL_FRAME -> new Rectangle2D.Double(-4, -4, 8, 8);
            case INSERT -> Marks.diamond(5.5);
        };
    }
}
