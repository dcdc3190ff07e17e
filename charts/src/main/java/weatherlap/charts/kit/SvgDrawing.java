package weatherlap.charts.kit;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * A picture read back from the SVG that {@link Picture#svg} writes, to be drawn elsewhere. It knows what our pictures hold (groups, rectangles,
 * paths, lines, circles, text, and how they look) and no more of SVG: what holds anything else is not read at all.
 */
public final class SvgDrawing {
    private static final String MOVED = "transform";
    private static final String SHIFT = "translate(";

    private final List<Piece> pieces = new ArrayList<>();
    private final double widthPx;
    private final double heightPx;

    private record Piece(Shape shape, SvgLook look) {}

    private SvgDrawing(Element root) {
        String[] box = root.getAttribute("viewBox").split(" ", -1);
        if (box.length != 4 || !box[0].equals("0") || !box[1].equals("0")) {
            throw new IllegalArgumentException("no view box from 0 0");
        }
        widthPx = Double.parseDouble(box[2]);
        heightPx = Double.parseDouble(box[3]);
        children(root, SvgLook.PLAIN.with(root, "width", "height"), new AffineTransform());
    }

    /** The picture; empty where it holds what our pictures do not. */
    public static Optional<SvgDrawing> of(Element svg) {
        try {
            return Optional.of(new SvgDrawing(svg));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Width of what {@link #draw} draws, CSS px. */
    public double widthPx() {
        return widthPx;
    }

    /** Height of what {@link #draw} draws, CSS px. */
    public double heightPx() {
        return heightPx;
    }

    /** Draws it from (0, 0) to its width and height. Text is drawn as outlines. */
    public void draw(Graphics2D g) {
        for (Piece piece : pieces) {
            SvgLook look = piece.look();
            look.fill().ifPresent(color -> {
                g.setPaint(color);
                g.fill(piece.shape());
            });
            look.stroke().ifPresent(color -> {
                g.setPaint(color);
                g.setStroke(look.pen());
                g.draw(piece.shape());
            });
        }
    }

    private void children(Element parent, SvgLook look, AffineTransform place) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                read(element, look, moved(element, place));
            }
        }
    }

    private void read(Element e, SvgLook look, AffineTransform place) {
        switch (e.getLocalName()) {
            case "title", "desc" -> {}
            case "g" -> children(e, look.with(e, MOVED), place);
            case "text" -> {
                SvgLook own = look.with(e, MOVED, "x", "y");
                add(own.outline(e.getTextContent(), px(e, "x"), px(e, "y")), own, place);
            }
            case "rect" ->
                add(
                        new Rectangle2D.Double(px(e, "x"), px(e, "y"), px(e, "width"), px(e, "height")),
                        look.with(e, MOVED, "x", "y", "width", "height"),
                        place);
            case "line" ->
                add(
                        new Line2D.Double(px(e, "x1"), px(e, "y1"), px(e, "x2"), px(e, "y2")),
                        look.with(e, MOVED, "x1", "y1", "x2", "y2"),
                        place);
            case "circle" -> {
                double r = px(e, "r");
                add(
                        new Ellipse2D.Double(px(e, "cx") - r, px(e, "cy") - r, 2 * r, 2 * r),
                        look.with(e, MOVED, "cx", "cy", "r"),
                        place);
            }
            case "path" -> add(Outline.of(e.getAttribute("d")), look.with(e, MOVED, "d"), place);
            default -> throw new IllegalArgumentException(e.getLocalName());
        }
    }

    /** Of all that may move a piece, our pictures shift alone. */
    private static AffineTransform moved(Element element, AffineTransform place) {
        String how = element.getAttribute(MOVED);
        if (how.isEmpty()) {
            return place;
        }
        int comma = how.indexOf(',');
        if (!how.startsWith(SHIFT) || !how.endsWith(")") || comma < 0) {
            throw new IllegalArgumentException(how);
        }
        AffineTransform moved = new AffineTransform(place);
        moved.translate(
                Double.parseDouble(how.substring(SHIFT.length(), comma)),
                Double.parseDouble(how.substring(comma + 1, how.length() - 1)));
        return moved;
    }

    private void add(Shape shape, SvgLook look, AffineTransform place) {
        pieces.add(new Piece(place.isIdentity() ? shape : place.createTransformedShape(shape), look));
    }

    private static double px(Element element, String name) {
        String text = element.getAttribute(name);
        return text.isEmpty() ? 0 : Double.parseDouble(text);
    }

    /** Outlines as SVG writes them (SVG 1.1, 8.3): absolute moves, lines and curves, a letter each. */
    private static final class Outline {
        private final String text;
        private final Path2D path = new Path2D.Double();
        private int at;

        private Outline(String text) {
            this.text = text;
        }

        /** @throws IllegalArgumentException where it holds anything else */
        static Path2D of(String text) {
            Outline reading = new Outline(text);
            while (reading.at < text.length()) {
                reading.step(text.charAt(reading.at++));
            }
            return reading.path;
        }

        private void step(char letter) {
            switch (letter) {
                case 'M' -> path.moveTo(number(), number());
                case 'L' -> path.lineTo(number(), number());
                case 'Q' -> path.quadTo(number(), number(), number(), number());
                case 'C' -> path.curveTo(number(), number(), number(), number(), number(), number());
                case 'Z' -> path.closePath();
                case ' ' -> {}
                default -> throw new IllegalArgumentException(text);
            }
        }

        private double number() {
            while (at < text.length() && text.charAt(at) == ' ') {
                at++;
            }
            int begin = at;
            while (at < text.length() && "+-.0123456789Ee".indexOf(text.charAt(at)) >= 0) {
                at++;
            }
            return Double.parseDouble(text.substring(begin, at));
        }
    }
}
