package weatherlap.reports.handout;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weatherlap.charts.drawing.RoomView;
import weatherlap.charts.drawing.RoomView.Edge;
import weatherlap.charts.drawing.RoomView.Side;
import weatherlap.reports.handout.Handout.Difference;
import weatherlap.reports.handout.Handout.Seen;
import weatherlap.reports.handout.WindowKinds.Group;
import weatherlap.reports.page.Figure;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.geometry.Glass;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.geometry.Rect;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;

/** One window of the house large, today and by each method, as the family sees it from the room; and the daylight of the whole house. */
record SeeTheDifference(
        WindowKinds kinds,
        List<Method> methods,
        Map<Method, HouseTakeoff> takeoffs,
        Daylight daylight,
        FamilyWords words,
        Density density) {
    private static final double ALL_VIEWS_PX = 700;
    private static final double LEAST_IN = 1 / 16.0;

    Difference difference() {
        Group group = kinds.tellingMost(1).get(0);
        int opening = group.openings().get(0);
        List<Seen> views = new ArrayList<>();
        views.add(view(group, geometry(methods.get(0), opening), words.of("today"), "today", false));
        for (Method method : methods) {
            views.add(view(group, geometry(method, opening), words.name(method), method.label(), true));
        }
        return new Difference(
                words.of(
                        "difference.window",
                        group.mark(),
                        FamilyWords.capital(words.name(takeoffs.get(methods.get(0))
                                .openings()
                                .get(opening)
                                .opening()
                                .place()
                                .room())),
                        group.size()),
                views,
                daylight.squares(),
                daylight.note());
    }

    private Seen view(Group group, OpeningGeometry geometry, String name, String style, boolean after) {
        Glass glass = after ? geometry.replaced() : geometry.existing();
        boolean fits = glass.glassFt2() > 0;
        Rect before = bounds(geometry.existing());
        double scale = RoomView.scale(
                group.widthIn(), group.heightIn(), ALL_VIEWS_PX / (methods.size() + 1), density.viewPx());
        String label = words.of("window.drawn", group.mark(), name);
        List<Edge> edges = after && fits ? edges(before, bounds(glass)) : List.of();
        RoomView view = new RoomView(
                label,
                told(label, glass, edges),
                WindowShape.of(glass),
                group.widthIn(),
                group.heightIn(),
                new Rectangle2D.Double(before.leftIn(), before.bottomIn(), before.widthIn(), before.heightIn()),
                edges,
                scale);
        return new Seen(name, style, Figure.of(view), view.widthPx(), caption(geometry, glass, after));
    }

    private String told(String label, Glass glass, List<Edge> edges) {
        String seen = words.of(
                "difference.seen",
                label,
                glass.glassFt2() > 0 ? phrases().ft2(glass.glassFt2()) : words.of("does.not.fit"));
        return edges.stream()
                .map(edge -> words.of("difference.edge", edge.label(), words.name(edge.side())))
                .reduce(seen, (a, b) -> a + " " + b);
    }

    private String caption(OpeningGeometry geometry, Glass glass, boolean after) {
        if (glass.glassFt2() <= 0) {
            return words.of("does.not.fit");
        }
        return after
                ? words.of(
                        "difference.after",
                        phrases().ft2(glass.glassFt2()),
                        phrases()
                                .change(1
                                        - glass.glassFt2() / geometry.existing().glassFt2()))
                : words.of("difference.before", phrases().ft2(glass.glassFt2()));
    }

    /** The edges of the glass that come in or go out, as the room sees them: its left is the right of one who stands outside. */
    private List<Edge> edges(Rect before, Rect after) {
        List<Edge> edges = new ArrayList<>();
        add(edges, Side.LEFT, before.rightIn() - after.rightIn());
        add(edges, Side.RIGHT, after.leftIn() - before.leftIn());
        add(edges, Side.TOP, before.topIn() - after.topIn());
        add(edges, Side.BOTTOM, after.bottomIn() - before.bottomIn());
        return edges;
    }

    private static void add(List<Edge> edges, Side side, double lostIn) {
        if (Math.abs(lostIn) >= LEAST_IN) {
            edges.add(new Edge(side, (lostIn < 0 ? "+" : "") + Phrases.inches(Math.abs(lostIn)) + "\u2033"));
        }
    }

    private static Rect bounds(Glass glass) {
        List<Rect> lites = glass.lites();
        double left = lites.stream().mapToDouble(Rect::leftIn).min().orElse(0);
        double bottom = lites.stream().mapToDouble(Rect::bottomIn).min().orElse(0);
        double right = lites.stream().mapToDouble(Rect::rightIn).max().orElse(0);
        double top = lites.stream().mapToDouble(Rect::topIn).max().orElse(0);
        return new Rect(left, bottom, right - left, top - bottom);
    }

    private OpeningGeometry geometry(Method method, int opening) {
        return takeoffs.get(method).openings().get(opening).geometry();
    }

    private Phrases phrases() {
        return new Phrases(words);
    }
}
