package weatherlap.datasets.shop;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import weatherlap.datasets.table.Xml;

/**
 * An SVG file as a logo: its shapes and gradients are written anew, from elements and attributes that are known and checked one by one.
 * Whatever acts or reaches outside is refused, what only an editor needs is left out.
 *
 * @see "Scalable Vector Graphics (SVG) 1.1, second edition, W3C"
 */
final class SvgLogo {
    static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private SvgLogo() {}

    /** @throws LogoRefused if it is none, or holds what a logo must not */
    static Logo of(byte[] file) throws LogoRefused {
        Element root = parsed(file);
        if (!root.getLocalName().equals("svg") || !NAMESPACE.equals(root.getNamespaceURI())) {
            throw new LogoRefused("is not a PNG or SVG picture");
        }
        List<Double> box = box(root);
        String inner = new SvgShapes(root).inner();
        if (inner.isEmpty()) {
            throw new LogoRefused("holds no shape");
        }
        double scale = 400 / Math.max(box.get(2), box.get(3));
        String viewBox = String.format(Locale.ROOT, "%s %s %s %s", box.toArray());
        return new Logo.Svg(side(box.get(2) * scale), side(box.get(3) * scale), viewBox, inner);
    }

    private static int side(double px) {
        return Math.max(1, (int) Math.round(px));
    }

    /** Left, top, width and height of the picture, in its own units. */
    private static List<Double> box(Element root) throws LogoRefused {
        List<Double> box = new ArrayList<>();
        if (root.hasAttribute("viewBox")) {
            box.addAll(SvgValues.numbers(root.getAttribute("viewBox")));
        } else {
            OptionalDouble width = SvgValues.px(root.getAttribute("width"));
            OptionalDouble height = SvgValues.px(root.getAttribute("height"));
            if (width.isPresent() && height.isPresent()) {
                box.addAll(List.of(0.0, 0.0, width.getAsDouble(), height.getAsDouble()));
            }
        }
        boolean sane = box.size() == 4
                && Math.min(box.get(2), box.get(3)) > 0
                && box.stream().allMatch(n -> Math.abs(n) <= Logo.LONGEST_SIDE)
                && Math.max(box.get(2), box.get(3)) <= 50 * Math.min(box.get(2), box.get(3));
        if (!sane) {
            throw new LogoRefused(
                    "does not say its size, or not one that a letterhead needs (expected: viewBox, or width"
                            + " and height, of at most " + Logo.LONGEST_SIDE + ", no side over 50 times the other)");
        }
        return box;
    }

    private static Element parsed(byte[] file) throws LogoRefused {
        try {
            return Xml.parsed(new InputSource(new ByteArrayInputStream(file))).getDocumentElement();
        } catch (SAXException | IOException e) {
            String message = String.valueOf(e.getMessage());
            throw new LogoRefused(
                    message.contains("DOCTYPE")
                            ? "has a document type, which may hold entities; take the DOCTYPE out"
                            : "is not a PNG or SVG picture");
        }
    }
}
