package weatherlap.reports.options;

import java.util.Iterator;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.page.Paper;

/** What a sheet about one house is made from, and what it is printed on. */
public final class SheetOptions {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Mixin
    private InputOptions input;

    @Mixin
    private ShopOption shop;

    @Option(
            names = "--all",
            description = "Write a sheet for every house, each in its own folder, and a page that lists them.")
    private boolean all;

    @Option(
            names = "--house",
            paramLabel = "ID",
            description = "The house, as in houses.csv. Leave it out if there is only one.")
    private String house = "";

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            completionCandidates = Words.class,
            description = "Paper size: letter or a4 (default: letter).")
    private Paper paper = Paper.LETTER;

    public InputPaths paths() {
        return input.paths().withShop(shop.path());
    }

    /** Whether every house is asked for, and none by name. */
    public boolean all() {
        if (all && !house.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "--all and --house ask for different things; use one of" + " them");
        }
        return all;
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
