package weatherlap.charts.study;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * In which kinds of house a set of assumptions changes the plan: a row a kind, a column a set, darker where more of the kind change.
 *
 * @param scope what is counted, for the line under the title
 * @param sets names of the sets beside the first
 */
public record ChangedKinds(String scope, List<String> sets, List<Group> groups) implements Picture {
    private static final int LABEL_PX = 190;
    private static final int ROW_PX = 24;
    private static final int GROUP_PX = 30;
    private static final int HEAD_PX = 34;
    private static final double TEXT_DROP_PX = 4;
    /** From this share on, a cell is too dark for ink. */
    private static final double DARK = 0.55;

    /** Kinds that are told apart by one thing. */
    public record Group(String title, List<Kind> kinds) {
        public Group {
            kinds = List.copyOf(kinds);
        }
    }

    /**
     * A kind of house.
     *
     * @param houses of it, 1 or more
     * @param changed how many of them have another plan than under the first set, by set
     */
    public record Kind(String label, int houses, List<Integer> changed) {
        public Kind {
            changed = List.copyOf(changed);
            changed.forEach(count -> Check.within("changed", count, 0, houses));
        }

        private double share(int set) {
            return (double) changed.get(set) / houses;
        }
    }

    public ChangedKinds {
        sets = List.copyOf(sets);
        groups = List.copyOf(groups);
        for (Group group : groups) {
            for (Kind kind : group.kinds()) {
                Check.within("number of sets of a kind", kind.changed().size(), sets.size(), sets.size());
            }
        }
    }

    @Override
    public String name() {
        return "flips-by-kind";
    }

    @Override
    public String title() {
        return "Which kinds of house change their plan";
    }

    @Override
    public int heightPx() {
        return isEmpty()
                ? Frame.EMPTY_PX
                : Frame.HEAD_PX + HEAD_PX + GROUP_PX * groups.size() + ROW_PX * (int) kinds().count();
    }

    private boolean isEmpty() {
        return sets.isEmpty() || kinds().findAny().isEmpty();
    }

    private Stream<Kind> kinds() {
        return groups.stream().flatMap(group -> group.kinds().stream());
    }

    @Override
    public String message() {
        return isEmpty()
                ? "There are no kinds of house to show."
                : IntStream.range(0, sets.size()).mapToObj(this::most).collect(Collectors.joining(" "));
    }

    /** In which kind the largest share changes under a set. */
    private String most(int set) {
        Kind most = kinds().max(Comparator.comparingDouble((Kind kind) -> kind.share(set))
                        .thenComparingInt(Kind::houses))
                .orElseThrow();
        String name = "Under \"" + Lettering.clean(sets.get(set)) + "\" ";
        return most.changed().get(set) == 0
                ? name + "no plan changes."
                : name + "plans change most in " + Lettering.clean(most.label()) + ": in "
                        + most.changed().get(set) + " of " + Numbers.count(most.houses(), "house", "houses") + ".";
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        double y = Frame.HEAD_PX + HEAD_PX;
        for (int s = 0; s < sets.size(); s++) {
            String name = Lettering.fit(sets.get(s), Theme.SMALL_STRONG, columnPx() - Theme.SPACE_PX);
            Lettering.draw(g, name, Theme.SMALL_STRONG, Tone.INK, x(s) + columnPx() / 2, y - 10, 0.5);
        }
        for (Group group : groups) {
            g.setPaint(Tone.LINE.color());
            g.setStroke(Theme.THIN);
            g.draw(new Line2D.Double(0, y, widthPx(), y));
            String title = Lettering.fit(group.title(), Theme.STRONG, widthPx());
            Lettering.draw(g, title, Theme.STRONG, Tone.INK, 0, y + GROUP_PX - 10.0, 0);
            y += GROUP_PX;
            for (Kind kind : group.kinds()) {
                row(g, kind, y);
                y += ROW_PX;
            }
        }
    }

    private double columnPx() {
        return (double) (widthPx() - LABEL_PX) / sets.size();
    }

    private double x(int set) {
        return LABEL_PX + columnPx() * set;
    }

    private void row(Graphics2D g, Kind kind, double top) {
        double middle = top + ROW_PX / 2.0 + TEXT_DROP_PX;
        String label = Lettering.fit(kind.label(), Theme.TEXT, LABEL_PX - 2.0 * Theme.SPACE_PX);
        Lettering.draw(g, label, Theme.TEXT, Tone.INK, LABEL_PX - (double) Theme.SPACE_PX, middle, 1);
        for (int s = 0; s < sets.size(); s++) {
            double share = kind.share(s);
            g.setPaint(Theme.mix(Tone.FAINT.color(), Tone.MUTED.color(), share));
            g.fill(new Rectangle2D.Double(x(s) + 1, top + 1, columnPx() - 2, ROW_PX - 2.0));
            String text = Lettering.fit(
                    Numbers.plain(kind.changed().get(s), 0) + " of " + Numbers.plain(kind.houses(), 0),
                    Theme.SMALL,
                    columnPx() - 4);
            Tone tone = share > DARK ? Tone.PAPER : Tone.INK;
            Lettering.draw(g, text, Theme.SMALL, tone, x(s) + columnPx() / 2, middle, 0.5);
        }
    }
}
