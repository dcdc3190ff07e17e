package weatherlap.datasets.portfolio;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import weatherlap.datasets.table.Schema;

/** A portfolio to fill in: one made-up house with one window, and notes. */
public final class TemplatePortfolio {
    /** In the order to fill them in. */
    public static final List<Schema> TABLES =
            List.of(PortfolioTables.HOUSES, PortfolioTables.ELEVATIONS, PortfolioTables.OPENINGS);

    private TemplatePortfolio() {}

    /** A table by its file name, or {@code NOTES.txt}. */
    public static byte[] bytes(String file) {
        try (InputStream in = TemplatePortfolio.class.getResourceAsStream("template/" + file)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
