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
        description = "Writes the family's sheet for one house: handout.pdf, two pages, and handout.html.",
        footer = {
            "",
            "Of a portfolio of many houses the rows of this one alone are read and checked.",
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
            description = "Of the sheet: en (English) or es (Spanish); inches and dollars stay. Else: en.")
    private Language language = Language.EN;

    @Option(
            names = "--prices",
            paramLabel = "YES_OR_NO",
            completionCandidates = YesOrNo.class,
            description = "Whether prices stand on it: yes or no. Else: yes.")
    private YesOrNo.Word prices = YesOrNo.Word.YES;

    @Option(
            names = "--choice",
            paramLabel = "LINE",
            description =
                    "What a family has ticked, as the page handout.html gives it: it becomes a choice of the sheet.")
    private String choice = "";

    @Option(
            names = "--inside",
            description =
                    "Also write inside.pdf, for the salesperson alone: margin, floor price, what speaks for each choice.")
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
