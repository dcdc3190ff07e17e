package weatherlap.charts;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import weatherlap.sim.Check;

/**
 * Cost difference, full-flange less insert, by what houses or openings have in common: cladding, storeys, decade, bearing,
 * overhang.
 *
 * @param scope what is counted, for the line under the title
 * @param cost which cost, without its unit: cost over 15 years
 * @param groups one for each thing they are told apart by
 */
public record CostBySegment(String scope, String cost, List<Group> groups) implements Picture {

    /** A heading and the segments under it. */
    public record Group(String heading, List<Segment> segments) {
        public Group {
            Check.text("heading", heading);
            segments = List.copyOf(segments);
        }
    }

    /**
     * What has a value in common.
     *
     * @param label the value
     * @param number how many there are of it
     * @param differenceUsd full-flange less insert, USD: 10, 50 and 90 % points
     */
    public record Segment(String label, int number, Spread differenceUsd) {
        public Segment {
            Check.text("label", label);
        }

        /** The method that costs less in the middle. */
        MethodStyle cheaper() {
            return differenceUsd.middle() < 0 ? MethodStyle.FULL_FLANGE : MethodStyle.INSERT;
        }
    }

    private static final int WORDS_PX = 18;

    public CostBySegment {
        Check.text("cost", cost);
        groups = List.copyOf(groups);
    }

    @Override
    public String name() {
        return "cost-by-segment";
    }

    @Override
    public String title() {
        return "Where full-flange costs more, and how much";
    }

    @Override
    public int heightPx() {
        return Frame.HEAD_PX + WORDS_PX + Grouped.heightPx(rows()) + 44;
    }

    private List<Segment> segments() {
        return groups.stream().flatMap(group -> group.segments().stream()).toList();
    }

    @Override
    public String message() {
        if (segments().isEmpty()) {
            return "There are no segments to compare.";
        }
        Comparator<Segment> byMiddle =
                Comparator.comparingDouble(s -> s.differenceUsd().middle());
        long fullFlange = segments().stream()
                .filter(s -> s.cheaper() == MethodStyle.FULL_FLANGE)
                .count();
        return Words.sentence(Words.clean(cost)) + ", full-flange less insert, is least for "
                + text(segments().stream().min(byMiddle).orElseThrow()) + " and greatest for "
                + text(segments().stream().max(byMiddle).orElseThrow()) + "; full-flange costs less in "
                + Numbers.plain(fullFlange, 0) + " of "
                + Numbers.count(segments().size(), "segment", "segments") + ".";
    }

    private String text(Segment segment) {
        String heading = groups.stream()
                .filter(group -> group.segments().contains(segment))
                .findFirst()
                .orElseThrow()
                .heading();
        return Words.clean(heading) + " " + Words.clean(segment.label()) + " ("
                + Numbers.signedUsd(segment.differenceUsd().middle()) + ")";
    }

    private List<Grouped.Group> rows() {
        return groups.stream()
                .map(group -> new Grouped.Group(
                        group.heading(),
                        group.segments().stream()
                                .map(s -> Words.clean(s.label()) + " (" + Numbers.plain(s.number(), 0) + ")")
                                .toList()))
                .toList();
    }

    NumberAxis axis() {
        return Axes.value(
                Words.axis(cost, ", full-flange less insert, USD: median and 10 to 90 %"),
                Axes.Format.SIGNED_USD,
                true,
                segments().stream()
                        .flatMapToDouble(s -> DoubleStream.of(
                                s.differenceUsd().low(), s.differenceUsd().high())));
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (segments().isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        XYPlot plot = Grouped.plot(rows(), axis());
        Map<MethodStyle, List<Rows.Dot>> dots = dots();
        dots.forEach((method, its) -> Rows.addDots(plot, its, method));
        plot.addAnnotation(((Layer) (canvas, s) -> {
                    sides(canvas, s);
                    dots.values().forEach(its -> its.forEach(dot -> number(canvas, s, dot)));
                })
                .annotation());
        Frame.body(g, this, WORDS_PX, plot);
    }

    /** Each dot in the style of the method that costs less. */
    private Map<MethodStyle, List<Rows.Dot>> dots() {
        Map<MethodStyle, List<Rows.Dot>> dots = new EnumMap<>(MethodStyle.class);
        for (int i = 0; i < groups.size(); i++) {
            for (int k = 0; k < groups.get(i).segments().size(); k++) {
                Segment segment = groups.get(i).segments().get(k);
                dots.computeIfAbsent(segment.cheaper(), m -> new ArrayList<>())
                        .add(new Rows.Dot(Grouped.row(rows(), i, k), segment.differenceUsd()));
            }
        }
        return dots;
    }

    private static void number(Graphics2D g, Scales s, Rows.Dot dot) {
        double x = Math.max(s.xPx(dot.spread().high()), s.xPx(dot.spread().middle()) + 6) + 7;
        Words.draw(g, Numbers.signedUsd(dot.spread().middle()), Theme.SMALL, Tone.INK, x, s.yPx(dot.row()) + 4, 0);
    }

    /** Which way is whose: over the plot, on both sides of zero, where there is room. */
    private static void sides(Graphics2D g, Scales s) {
        double zero = s.xPx(0);
        double y = s.area().getMinY() - 6;
        Words.draw(g, "insert costs less \u2192", Theme.SMALL_STRONG, Tone.INSERT_TEXT, zero + 6, y, 0);
        Words.draw(g, "\u2190 full-flange costs less", Theme.SMALL_STRONG, Tone.FULL_FLANGE_TEXT, zero - 6, y, 1);
    }
}
