package weatherlap.datasets.shop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import weatherlap.datasets.table.Quoted;

/** The shapes of an SVG picture, written anew. */
final class SvgShapes {
    private static final Set<String> SHAPES =
            Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");
    private static final Set<String> GROUPS = Set.of("g", "defs", "linearGradient", "radialGradient", "stop");
    private static final Set<String> LEFT_OUT = Set.of("title", "desc", "metadata");
    private static final Set<String> GRADIENTS = Set.of("linearGradient", "radialGradient");
    private static final int MOST_ELEMENTS = 5000;
    private static final int DEEPEST = 30;

    private final Element root;
    private final Set<String> gradients = new HashSet<>();
    private final StringBuilder out = new StringBuilder();
    private int elements;

    SvgShapes(Element root) {
        this.root = root;
    }

    /** The elements inside the root, as text; empty where there is no shape. */
    String inner() throws LogoRefused {
        checkActs(root);
        findGradients(root, 0);
        int shapes = 0;
        Map<String, String> style = attributes(root, false);
        out.append("<g").append(text(style)).append('>');
        for (Element child : children(root)) {
            shapes += write(child);
        }
        return shapes == 0 ? "" : out.append("</g>").toString();
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

    private void findGradients(Element element, int depth) throws LogoRefused {
        if (++elements > MOST_ELEMENTS || depth > DEEPEST) {
            throw new LogoRefused("is no simple picture: over " + MOST_ELEMENTS + " elements or " + DEEPEST
                    + " of them in one another");
        }
        if (GRADIENTS.contains(element.getLocalName()) && element.hasAttribute("id")) {
            gradients.add(element.getAttribute("id"));
        }
        for (Element child : children(element)) {
            findGradients(child, depth + 1);
        }
    }

    /** How many shapes were written. */
    private int write(Element element) throws LogoRefused {
        checkActs(element);
        String name = element.getLocalName();
        boolean svg = SvgLogo.NAMESPACE.equals(element.getNamespaceURI());
        if (!svg || LEFT_OUT.contains(name)) {
            return 0;
        }
        boolean shape = SHAPES.contains(name);
        if (!shape && !GROUPS.contains(name)) {
            throw new LogoRefused("holds the element " + Quoted.of(name)
                    + "; a logo is made of paths, simple shapes and gradients (turn text into paths)");
        }
        out.append('<').append(name).append(text(attributes(element, true))).append('>');
        int shapes = shape ? 1 : 0;
        for (Element child : shape ? List.<Element>of() : children(element)) {
            shapes += write(child);
        }
        out.append("</").append(name).append('>');
        return shapes;
    }

    private static void checkActs(Element element) throws LogoRefused {
        String name = element.getLocalName().toLowerCase(Locale.ROOT);
        if (name.equals("script")) {
            throw new LogoRefused("holds a script");
        }
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            String attribute = attributes.item(i).getLocalName().toLowerCase(Locale.ROOT);
            if (attribute.startsWith("on")) {
                throw new LogoRefused("holds a script (" + Quoted.bare(attribute) + ")");
            }
            if (attribute.equals("href") || attribute.equals("src") || attribute.equals("base")) {
                throw new LogoRefused(
                        "refers to something else (" + Quoted.bare(attribute) + "); a logo holds all it shows");
            }
        }
    }

    /** Those that are known, checked, by name; those of the style too. */
    private Map<String, String> attributes(Element element, boolean geometry) throws LogoRefused {
        Map<String, String> kept = new TreeMap<>();
        NamedNodeMap all = element.getAttributes();
        for (int i = 0; i < all.getLength(); i++) {
            Attr attribute = (Attr) all.item(i);
            if (attribute.getNamespaceURI() == null && (geometry || SvgValues.isPaint(attribute.getName()))) {
                keep(attribute.getName(), attribute.getValue(), kept);
            }
        }
        for (String declaration : element.getAttribute("style").split(";", -1)) {
            int colon = declaration.indexOf(':');
            String name = colon < 0 ? "" : declaration.substring(0, colon).strip();
            if (SvgValues.isPaint(name)) {
                keep(name, declaration.substring(colon + 1), kept);
            }
        }
        return kept;
    }

    private void keep(String name, String value, Map<String, String> kept) throws LogoRefused {
        if (!SvgValues.isKnown(name)) {
            return;
        }
        String clean = SvgValues.checked(name, value.strip(), gradients);
        if (!clean.isEmpty()) {
            kept.put(name, clean);
        }
    }

    /** Values are made of signs that need no escape, see {@link SvgValues}. */
    private static String text(Map<String, String> attributes) {
        StringBuilder text = new StringBuilder();
        attributes.forEach((name, value) ->
                text.append(' ').append(name).append("=\"").append(value).append('"'));
        return text.toString();
    }
}
