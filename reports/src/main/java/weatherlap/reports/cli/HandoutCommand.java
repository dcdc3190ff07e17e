package weatherlap.reports.cli;

import java.util.Iterator;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weatherlap.reports.jobs.HandoutWishes;
import weatherlap.reports.jobs.MakeHandout;
import weatherlap.reports.options.EnumWords;
import weatherlap.reports.options.MethodsOption;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.SheetOptions;
import weatherlap.reports.options.YesOrNo;
import weatherlap.reports.words.Language;

@Command(
        name = "handout",
        description = "Writes a family's sheet for one house: handout.pdf (two pages) and handout.html.",
        footer = {
            "",
            "In a large portfolio, only the rows of this house are read and checked.",
            "",
            "Examples, the first in the bundled demo:",
            "  weatherlap handout --house G0014 --out handout",
            "  weatherlap handout --all --out handouts",
            "  weatherlap handout my-houses --paper a4 --out handout-a4",
            "  weatherlap handout --house G0014 --language es --prices no --out hoja"
        })
final class HandoutCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private SheetOptions sheet;

    @Mixin
    private MethodsOption methods;

    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            completionCandidates = Languages.class,
            description = "Language of the sheet: en (English) or es (Spanish) (default: en). Inches and dollars stay.")
    private Language language = Language.EN;

    @Option(
            names = "--prices",
            paramLabel = "YES_OR_NO",
            completionCandidates = YesOrNo.class,
            description = "Show prices: yes or no (default: yes).")
    private YesOrNo.Word prices = YesOrNo.Word.YES;

    @Option(
            names = "--choice",
            paramLabel = "LINE",
            description = "What the family ticked: the line that handout.html gives. It becomes a choice on the sheet.")
    private String choice = "";

    @Option(
            names = "--inside",
            description = "Also write inside.pdf, for the salesperson only: margin, floor price, what speaks for each"
                    + " choice.")
    private boolean inside;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        HandoutWishes wishes = new HandoutWishes(language, prices == YesOrNo.Word.YES, inside, choice);
        MakeHandout job =
                new MakeHandout(methods.in(sheet.paths()), sheet.house(), sheet.paper(), wishes, output.request());
        if (sheet.all()) {
            job.runAll(common.messages());
        } else {
            job.run(common.messages());
        }
        return 0;
    }

    static final class Languages implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return EnumWords.of(Language.class).iterator();
        }
    }
}
