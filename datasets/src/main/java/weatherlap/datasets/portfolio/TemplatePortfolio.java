package weatherlap.datasets.portfolio;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;

/** A portfolio to fill in: one made-up house with one window, and notes. */
public final class TemplatePortfolio {
    private TemplatePortfolio() {}

    /** Whether a row of {@code houses.csv} is that of the made-up house, with its key and what it is called; in a short table it is called by its key. */
    static boolean isExample(Row house) {
        return Example.ROW.text("house_id").equals(house.text("house_id"))
                && List.of(Example.ROW.text("label"), Example.ROW.text("house_id"))
                        .contains(house.text("label"));
    }

    /** Read when it is first asked for. */
    private static final class Example {
        static final Row ROW = Folder.beside(TemplatePortfolio.class, "template")
                .table(PortfolioTables.HOUSES, new Problems())
                .flatMap(table -> table.rows().findFirst())
                .orElseThrow();
    }

    /** A table by its file name, or {@code NOTES.txt}. */
    public static byte[] bytes(String file) {
        try (InputStream in = TemplatePortfolio.class.getResourceAsStream("template/" + file)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
