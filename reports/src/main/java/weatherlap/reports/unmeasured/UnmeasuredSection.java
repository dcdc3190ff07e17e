package weatherlap.reports.unmeasured;

import java.util.List;
import java.util.Optional;
import weatherlap.analysis.unmeasured.DefaultSwing;
import weatherlap.analysis.unmeasured.SwingStudy;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.shortform.HouseDefaults.Default;
import weatherlap.datasets.shortform.ShortPortfolio.Taken;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.ReportWords;
import weatherlap.reports.page.Section;
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Contrast;

/** What the short table left out, and what it would be worth to measure it. */
public final class UnmeasuredSection {
    private static final int FIRST = 3;

    private UnmeasuredSection() {}

    /** @param years over which costs are counted */
    public static Section of(SwingStudy study, Contrast contrast, int years) {
        List<Block> blocks = List.of(
                new Block.Paragraphs(List.of(
                        "Your short table leaves these things out, so the program took what is usual. Each row moves one"
                                + " of them from one end of what it may be to the other and leaves the rest alone. It shows"
                                + " what " + contrast.first().inSentence() + " then saves a house against "
                                + contrast.second().inSentence() + " over " + Numbers.count(years, "year", "years")
                                + ". A minus means that it costs more.",
                        "The first rows are worth measuring first. Put what you measure into a column of that name (for"
                                + " gap_in: width_ft and left_in). This comes from "
                                + Numbers.count(study.houses(), "house", "houses") + " of yours.")),
                new Block.Table(table(study), "long", ""));
        return new Section("unmeasured", "What was not measured", "Not measured", Section.Sheet.WIDE, blocks);
    }

    private static TableView table(SwingStudy study) {
        TableView.Builder table = TableView.of("What was taken as usual, and what it would be worth to measure it")
                .texts("column", "taken", "may be")
                .numbers("saves at one end", "as taken", "saves at the other", "apart", "houses that change")
                .texts("rests on");
        study.swings().forEach(swing -> table.row(row(swing)));
        return table.build();
    }

    private static String[] row(DefaultSwing swing) {
        Default first = swing.taken().first();
        return new String[] {
            swing.taken().column(),
            String.join(" or ", swing.taken().values()),
            range(swing.taken()),
            ReportWords.usd(swing.leastUsd()),
            ReportWords.usd(swing.takenUsd()),
            ReportWords.usd(swing.mostUsd()),
            ReportWords.usd(swing.usd()),
            Integer.toString(swing.changing()),
            first.basis().word() + (first.source().isEmpty() ? "" : ": " + first.source())
        };
    }

    /** Where what is taken hangs on the house, the range of the first kind. */
    private static String range(Taken taken) {
        Default first = taken.first();
        return (first.least().equals(first.most()) ? first.least() : first.least() + " to " + first.most())
                + (taken.values().size() > 1 ? " where " + first.given() : "");
    }

    /** What to measure first, in a line; empty: nothing moves the answer. */
    public static Optional<String> inALine(SwingStudy study) {
        List<String> first = study.swings().stream()
                .filter(swing -> Math.round(swing.usd()) > 0)
                .limit(FIRST)
                .map(swing -> swing.taken().column() + " (it moves the saving by " + ReportWords.usd(swing.usd())
                        + " a house)")
                .toList();
        return first.isEmpty() ? Optional.empty() : Optional.of("worth measuring first: " + String.join(", ", first));
    }
}
