package weatherlap.charts.kit;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Writes a picture as SVG. The element has a size and a view box, names and describes itself, carries no id (so that many
 * of them can stand in one page) and refers to nothing outside.
 */
final class SvgCanvas extends SVGGraphics2D {

    private static final String SVG = "http://www.w3.org/2000/svg";

    private SvgCanvas(SVGGeneratorContext context) {
        super(context, false);
    }

    private SvgCanvas(SvgCanvas other) {
        super(other);
    }

    static String write(Picture picture) {
        Fonts.install();
        Document document = GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(2);
        SvgCanvas canvas = new SvgCanvas(context);
        canvas.setSVGCanvasSize(new Dimension(picture.widthPx(), picture.heightPx()));
        canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        canvas.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        canvas.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        canvas.setFont(Theme.TEXT);
        picture.draw(canvas);
        Element root = canvas.getRoot();
        describe(root, picture);
        return canvas.text(root);
    }

    private static void describe(Element root, Picture picture) {
        tidy(root);
        root.setAttribute("viewBox", "0 0 " + picture.widthPx() + " " + picture.heightPx());
        root.setAttribute("font-family", Theme.FONT_STACK);
        root.setAttribute("role", "img");
        root.setAttribute("aria-label", Lettering.clean(picture.message()));
        Node first = root.getFirstChild();
        root.insertBefore(element(root, "title", picture.title()), first);
        root.insertBefore(element(root, "desc", picture.message()), first);
    }

    private static Element element(Element root, String name, String text) {
        Element element = root.getOwnerDocument().createElementNS(SVG, name);
        element.appendChild(root.getOwnerDocument().createTextNode(Lettering.clean(text)));
        return element;
    }

    /** Takes out ids, empty definitions and the fonts that the whole picture has in common. */
    private static void tidy(Element element) {
        element.removeAttribute("id");
        element.removeAttribute("font-family");
        sort(element);
        for (Element child : children(element)) {
            if (child.getLocalName().equals("defs") && child.getFirstChild() == null) {
                element.removeChild(child);
            } else {
                tidy(child);
            }
        }
    }

    /** Batik sets attributes in the order of a hash map, which is not the same in every version of Java. */
    private static void sort(Element element) {
        SortedMap<String, Attr> byName = new TreeMap<>();
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            Attr attribute = (Attr) element.getAttributes().item(i);
            byName.put(attribute.getName(), attribute);
        }
        byName.values().forEach(element::removeAttributeNode);
        byName.values()
                .forEach(attribute ->
                        element.setAttributeNS(attribute.getNamespaceURI(), attribute.getName(), attribute.getValue()));
    }

    private static List<Element> children(Element element) {
        List<Element> children = new ArrayList<>();
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                children.add(child);
            }
        }
        return children;
    }

    private String text(Element root) {
        try (StringWriter writer = new StringWriter()) {
            stream(root, writer, false, false);
            String text = writer.toString().replace("\r\n", "\n");
            return text.substring(text.indexOf("<svg"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Graphics create() {
        return new SvgCanvas(this);
    }

    /** Does nothing: axes are made to hold their data, and a clip would need an id. */
    @Override
    public void clip(Shape shape) {}

    @Override
    public void setClip(Shape shape) {}

    @Override
    public void setClip(int x, int y, int width, int height) {}

    @Override
    public void clipRect(int x, int y, int width, int height) {}

    @Override
    public Shape getClip() {
        return null;
    }
}
