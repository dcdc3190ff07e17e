package weatherlap.datasets.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.xml.sax.InputSource;

class CharactersTest {
    /** Whatever stood in a name, an XML parser takes what is shown of it. */
    @Property(tries = 300)
    void whatIsShownCanStandInXml(@ForAll String text) throws Exception {
        String shown = Characters.shown(text + "\uFFFE\uD800\u0001 \uD83C\uDFE0");
        String page = "<p>" + shown.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;") + "</p>";
        assertThat(DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(page)))
                        .getDocumentElement()
                        .getTextContent())
                .endsWith("\uFFFD\uFFFD\uFFFD \uD83C\uDFE0");
        assertThat(Characters.shown(shown)).isEqualTo(shown);
    }
}
