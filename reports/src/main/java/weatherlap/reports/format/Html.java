package weatherlap.reports.format;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import gg.jte.output.WriterOutput;
import java.io.BufferedWriter;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/**
 * Pages from templates, which are compiled at build time from {@code src/main/jte}. Every value is escaped for the place where it
 * stands (text, attribute, address, script); only pictures of {@code weatherlap.charts} go in as they are.
 */
public final class Html {
    private static final String PACKAGE = "weatherlap.reports.templates";

    private Html() {}

    /**
     * The page.
     *
     * @param template name under {@code src/main/jte}
     * @param page the template's one parameter
     */
    public static String render(String template, Object page) {
        StringOutput out = new StringOutput(1 << 16);
        engine().render(template, page, out);
        return out.toString();
    }

    /** The page as a file, made while it is written: it may be long. */
    public static Content file(String template, Object page) {
        return out -> {
            Writer letters = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), 1 << 13);
            try {
                engine().render(template, page, new WriterOutput(letters));
            } catch (UncheckedIOException e) {
                throw e.getCause();
            }
            letters.flush();
        };
    }

    private static TemplateEngine engine() {
        return TemplateEngine.createPrecompiled(null, ContentType.Html, Html.class.getClassLoader(), PACKAGE);
    }
}
