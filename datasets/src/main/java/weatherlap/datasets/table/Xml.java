package weatherlap.datasets.table;

import java.io.IOException;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Text in XML and out of it. */
public final class Xml {
    private Xml() {}

    /** A text that is no markup, as it stands in an element or between double quotes. */
    public static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }

    /**
     * Parses without fetching anything: no document type, no entities, no inclusions.
     *
     * @throws SAXException if it is not well-formed, or has a document type
     */
    public static Document parsed(InputSource source) throws SAXException, IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature("http://apache.org/xml/features/dom/defer-node-expansion", false); // all is read
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            DocumentBuilder parser = factory.newDocumentBuilder();
            parser.setErrorHandler(new DefaultHandler()); // throws what the parser would print
            return parser.parse(source);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the XML parser cannot be made safe", e);
        }
    }
}
