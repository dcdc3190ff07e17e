package weatherlap.reports.format;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

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
        TemplateEngine engine =
                TemplateEngine.createPrecompiled(null, ContentType.Html, Html.class.getClassLoader(), PACKAGE);
        StringOutput out = new StringOutput(1 << 16);
        engine.render(template, page, out);
        return out.toString();
    }
}
