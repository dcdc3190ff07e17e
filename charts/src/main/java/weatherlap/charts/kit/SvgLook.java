package weatherlap.charts.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;

/**
 * How a piece of a picture looks; pieces inherit it.
 *
 * @param fill empty: none
 * @param stroke empty: none
 * @param sizePx of type
 */
record SvgLook(Optional<Color> fill, Optional<Color> stroke, BasicStroke pen, float sizePx, boolean bold) {
    static final SvgLook PLAIN =
            new SvgLook(Optional.of(Color.BLACK), Optional.empty(), new BasicStroke(1, 0, 0, 4), Theme.TEXT_PX, false);

    /** Outlines are taken from type of this size, px, whose widths hold for every size. */
    private static final float MEASURED_PX = 48;

    private static final Font NORMAL = Theme.TEXT.deriveFont(MEASURED_PX);
    private static final Font BOLD = Theme.STRONG.deriveFont(MEASURED_PX);
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private static final Set<String> WITHOUT_EFFECT = Set.of(
            "aria-label",
            "role",
            "viewBox",
            "xmlns",
            "xmlns:xlink",
            "xml:space",
            "text-rendering",
            "shape-rendering",
            "image-rendering",
            "color-rendering",
            "color-interpolation");

    /**
     * With what an element says.
     *
     * @param geometry its attributes that are no matter of look
     * @throws IllegalArgumentException where it says what our pictures do not
     */
    SvgLook with(Element element, String... geometry) {
        SvgLook look = this;
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            Attr attribute = (Attr) element.getAttributes().item(i);
            String name = attribute.getName();
            if (!WITHOUT_EFFECT.contains(name) && Stream.of(geometry).noneMatch(name::equals)) {
                look = look.with(name, attribute.getValue());
            }
        }
        return look;
    }

    private SvgLook with(String name, String value) {
        return switch (name) {
            case "fill" -> new SvgLook(color(value), stroke, pen, sizePx, bold);
            case "stroke" -> new SvgLook(fill, color(value), pen, sizePx, bold);
            case "font-size" -> new SvgLook(fill, stroke, pen, px(value), bold);
            case "font-weight" -> new SvgLook(fill, stroke, pen, sizePx, of(value, "normal", "bold") == 1);
            case "font-style" -> only(value, "normal");
            case "font-family" -> only(value, Theme.FONT_STACK);
            case "fill-opacity", "stroke-opacity" -> only(value, "1");
            case "stroke-dashoffset" -> only(value, "0");
            default -> new SvgLook(fill, stroke, pen(name, value), sizePx, bold);
        };
    }

    private BasicStroke pen(String name, String value) {
        float width = name.equals("stroke-width") ? Float.parseFloat(value) : pen.getLineWidth();
        int cap = name.equals("stroke-linecap") ? of(value, "butt", "round", "square") : pen.getEndCap();
        int join = name.equals("stroke-linejoin") ? of(value, "miter", "round", "bevel") : pen.getLineJoin();
        float miter = name.equals("stroke-miterlimit") ? Float.parseFloat(value) : pen.getMiterLimit();
        float[] dashes = name.equals("stroke-dasharray") ? dashes(value) : pen.getDashArray();
        if (!name.startsWith("stroke-") || name.equals("stroke-dashoffset")) {
            throw new IllegalArgumentException(name);
        }
        return new BasicStroke(width, cap, join, miter, dashes, 0);
    }

    private SvgLook only(String value, String known) {
        of(value, known);
        return this;
    }

    private static int of(String value, String... known) {
        for (int i = 0; i < known.length; i++) {
            if (known[i].equals(value)) {
                return i;
            }
        }
        throw new IllegalArgumentException(value);
    }

    private static float[] dashes(String value) {
        if (value.equals("none")) {
            return null;
        }
        String[] texts = value.split(",", -1);
        float[] lengths = new float[texts.length];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = Float.parseFloat(texts[i]);
        }
        return lengths;
    }

    private static float px(String value) {
        if (!value.endsWith("px")) {
            throw new IllegalArgumentException(value);
        }
        return Float.parseFloat(value.substring(0, value.length() - 2));
    }

    private static Optional<Color> color(String value) {
        return switch (value) {
            case "none" -> Optional.empty();
            case "black" -> Optional.of(Color.BLACK);
            case "white" -> Optional.of(Color.WHITE);
            default -> Optional.of(rgb(value));
        };
    }

    private static Color rgb(String value) {
        if (!value.startsWith("rgb(") || !value.endsWith(")")) {
            throw new IllegalArgumentException(value);
        }
        String[] parts = value.substring(4, value.length() - 1).split(",", -1);
        if (parts.length != 3) {
            throw new IllegalArgumentException(value);
        }
        return new Color(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2]));
    }

    /**
     * Text as outlines, its baseline beginning at (x, y).
     *
     * @throws IllegalArgumentException where its letters do not simply follow each other, or the font lacks one
     */
    Shape outline(String text, double x, double y) {
        Font font = bold ? BOLD : NORMAL;
        char[] letters = text.toCharArray();
        if (Font.textRequiresLayout(letters, 0, letters.length)
                || font.canDisplayUpTo(text) >= 0
                || stroke.isPresent()) {
            throw new IllegalArgumentException(text);
        }
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(sizePx / MEASURED_PX, sizePx / MEASURED_PX);
        return place.createTransformedShape(
                font.createGlyphVector(CONTEXT, letters).getOutline());
    }
}
