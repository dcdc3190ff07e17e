package weatherlap.charts;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import weatherlap.charts.kit.Fonts;
import weatherlap.charts.kit.Lettering;

/** Reads a picture back: its root and the boxes of its texts. */
public record Svg(Element root) {

    public static Svg parse(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return new Svg(factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(text)))
                    .getDocumentElement());
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage() + "\n" + text, e);
        }
    }

    /** A text and where it stands. */
    public record Label(String text, Rectangle2D box) {}

    public List<Label> labels() {
        NodeList texts = root.getElementsByTagNameNS("*", "text");
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            if (!text.getTextContent().isBlank()) {
                labels.add(new Label(text.getTextContent(), box(text)));
            }
        }
        return labels;
    }

    public List<String> texts() {
        return labels().stream().map(Label::text).toList();
    }

    private static Rectangle2D box(Element text) {
        int size = (int) Double.parseDouble(inherited(text, "font-size").replace("px", ""));
        int style = inherited(text, "font-weight").equals("bold") ? Font.BOLD : Font.PLAIN;
        Font font = new Font(Fonts.FAMILY, style, size);
        double x = Double.parseDouble(text.getAttribute("x"));
        double y = Double.parseDouble(text.getAttribute("y"));
        return Lettering.box(text.getTextContent(), font, x, y);
    }

    private static String inherited(Element element, String attribute) {
        for (Node node = element; node instanceof Element e; node = node.getParentNode()) {
            if (e.hasAttribute("transform")) {
                throw new AssertionError("moved text: " + element.getTextContent());
            }
            if (e.hasAttribute(attribute)) {
                return e.getAttribute(attribute);
            }
        }
        throw new AssertionError("no " + attribute + " on " + element.getTextContent());
    }
}
