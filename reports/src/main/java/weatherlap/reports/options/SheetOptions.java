package weatherlap.reports.options;

import java.util.Iterator;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.page.Paper;

/** What a sheet about one house is made from, and what it is printed on. */
public final class SheetOptions {
    @Mixin
    private InputOptions input;

    @Mixin
    private ShopOption shop;

    @Option(
            names = "--house",
            paramLabel = "ID",
            description = "Key of the house, as in houses.csv; may be left out where there is only one.")
    private String house = "";

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            completionCandidates = Words.class,
            description = "Size of the paper: letter or a4. Else: letter.")
    private Paper paper = Paper.LETTER;

    public InputPaths paths() {
        return input.paths().withShop(shop.path());
    }

    /** Empty where the user names none. */
    public String house() {
        return house;
    }

    public Paper paper() {
        return paper;
    }

    public static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return EnumWords.of(Paper.class).iterator();
        }
    }
}
