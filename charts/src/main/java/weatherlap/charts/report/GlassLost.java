package weatherlap.charts.report;

import java.awt.Graphics2D;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Spread;
import weatherlap.sim.Check;
import weatherlap.sim.method.Contrast;

/**
 * Glass lost by method, as a fraction of the existing glass, for groups of openings.
 *
 * @param contrast the two methods
 * @param scope what is counted, for the line under the title
 * @param groups the whole first, then its parts
 */
public record GlassLost(Contrast contrast, String scope, List<Group> groups) implements Picture {

    /**
     * Openings of one kind.
     *
     * @param label what they have in common
     * @param openings how many there are
     * @param lost fraction of the existing glass that each method takes; below 0 where it gains
     */
    public record Group(String label, int openings, Pair<Spread> lost) {
        public Group {
            Check.text("label", label);
        }
    }

    public GlassLost {
        groups = List.copyOf(groups);
    }

    @Override
    public String name() {
        return "glass-lost";
    }

    @Override
    public String title() {
        return "How much of today\u2019s glass each method takes";
    }

    @Override
    public int heightPx() {
        return Frame.HEAD_PX + 44 * Math.max(2, groups.size()) + 44;
    }

    @Override
    public String message() {
        if (groups.isEmpty()) {
            return "There are no openings to compare.";
        }
        Group all = groups.get(0);
        String first = "Of today\u2019s glass " + contrast.second().inSentence() + " takes "
                + share(all.lost().second()) + ", "
                + contrast.first().inSentence() + " " + share(all.lost().first()) + " (medians of "
                + Numbers.count(all.openings(), "opening", "openings")
                + ", " + Lettering.clean(all.label()) + ").";
        return groups.stream()
                .skip(1)
                .max(Comparator.comparingDouble(GlassLost::gap))
                .map(widest -> first + " The methods differ most for " + Lettering.clean(widest.label()) + ": "
                        + share(widest.lost().second()) + " against "
                        + share(widest.lost().first()) + ".")
                .orElse(first);
    }

    private static double gap(Group group) {
        return Math.abs(group.lost().second().middle() - group.lost().first().middle());
    }

    private static String share(Spread lost) {
        return Numbers.percent(lost.middle(), 1);
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (groups.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        Frame.body(g, this, PairRows.dots(contrast, rows(), axis(), v -> Numbers.percent(v, 1)));
    }

    NumberAxis axis() {
        return Axes.value(
                "glass lost, % of the existing glass: median, and the range of eight openings in ten",
                Axes.Format.PERCENT,
                true,
                groups.stream()
                        .flatMap(group ->
                                Stream.of(group.lost().first(), group.lost().second()))
                        .flatMapToDouble(s -> java.util.stream.DoubleStream.of(s.low(), s.high())));
    }

    private List<PairRows.Ranges> rows() {
        return groups.stream()
                .map(group -> new PairRows.Ranges(
                        Lettering.clean(group.label()) + " (" + Numbers.plain(group.openings(), 0) + ")", group.lost()))
                .toList();
    }
}
