package weatherlap.reports.compare;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import weatherlap.analysis.season.SeasonStudy;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.Html;
import weatherlap.reports.format.Pdf;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.owner.FirstSection;
import weatherlap.reports.owner.MondaySection;
import weatherlap.reports.owner.OwnerFigures;
import weatherlap.reports.page.PageFiles;
import weatherlap.reports.page.ReportPage;
import weatherlap.reports.page.Section;
import weatherlap.reports.page.Unprintable;
import weatherlap.reports.season.PriceSection;
import weatherlap.reports.season.SeasonSection;
import weatherlap.reports.unmeasured.UnmeasuredSection;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.run.HouseResult;

/** The owner's report as a page on screen, as two printed pages, and as a printed appendix that holds the rest. */
final class ReportPages {
    private static final int PAGES = 2;

    private final CompareReport report;
    private final OwnerFigures figures;
    private final List<String> season;
    private final List<Section> rest;
    private final String notPrinted;

    /** Makes first what needs no findings: they may still be sought. */
    ReportPages(CompareReport report) {
        this.report = report;
        Section prices = PriceSection.of(report.comparison().shown(), report.terms());
        Section segments = SegmentsSection.of(report);
        Section houses = HousesSection.of(report);
        Section method = MethodSection.of(report);
        Section assumptions = AssumptionsSection.of(report);
        Scenario scenario = report.assumptions().scenario();
        Optional<SeasonStudy> study = report.found().get().season();
        figures = report.figures();
        season = study.map(found -> SeasonSection.sentences(found, scenario)).orElse(List.of());
        List<Section> sections = new ArrayList<>();
        sections.add(AnswerSection.of(report));
        report.unmeasured()
                .ifPresent(unmeasured -> sections.add(UnmeasuredSection.of(
                        unmeasured, report.comparison().answer().contrast(), report.years())));
        sections.addAll(List.of(
                EvidenceSection.of(report),
                SeasonSection.of(study, scenario),
                prices,
                segments,
                houses,
                method,
                assumptions));
        rest = List.copyOf(sections);
        notPrinted = Unprintable.note(
                report.comparison().results().houses().stream()
                        .map(HouseResult::house)
                        .flatMap(Unprintable::names),
                "report.html");
    }

    /** The two printed pages and the page on screen, which begin with the same. */
    void writeUpFront(OutputFolder folder) throws IOException {
        Section first = FirstSection.of(figures, report.ownRecords());
        folder.write("report.pdf", twoPages(first));
        folder.write(PageFiles.web("report", web(first)));
    }

    /** All of it. */
    private ReportPage web(Section first) {
        List<Section> sections = new ArrayList<>(upFront(first, MondaySection.MOST_NAMED));
        sections.addAll(rest);
        return page(report.title(), report.inShort(), sections);
    }

    /** The two pages that stand alone; houses are left to the appendix until the rest has room. */
    private Content twoPages(Section first) {
        int most = MondaySection.most(figures);
        List<Supplier<String>> layouts = IntStream.rangeClosed(0, most)
                .map(less -> most - less)
                .<Supplier<String>>mapToObj(named -> () ->
                        Html.render("reportsheet.jte", page(report.title(), report.inShort(), upFront(first, named))))
                .toList();
        return Pdf.fitting(report.title(), layouts, Math.max(0, most - MondaySection.LIKELY_NAMED), PAGES);
    }

    Content appendix() {
        String title = report.title() + ": appendix";
        return Pdf.of(title, Html.render("reportsheet.jte", page(title, report.scope(), rest)));
    }

    /** @param named houses at most */
    private List<Section> upFront(Section first, int named) {
        return List.of(first, MondaySection.of(figures, season, named));
    }

    private ReportPage page(String title, String scope, List<Section> sections) {
        return new ReportPage(title, scope, notPrinted, sections);
    }
}
