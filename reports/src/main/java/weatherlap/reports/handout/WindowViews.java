package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.drawing.WindowSketch;
import weatherlap.reports.handout.Handout.WindowGroup;
import weatherlap.reports.handout.Handout.WindowLine;
import weatherlap.reports.handout.Handout.WindowSection;
import weatherlap.reports.handout.Handout.WindowView;
import weatherlap.reports.handout.WindowKinds.Group;
import weatherlap.reports.handout.WindowKinds.Style;
import weatherlap.reports.page.Figure;
import weatherlap.sim.geometry.Glass;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;

/**
 * The groups of windows as a handout shows them: those that tell most drawn at one scale, the others in lines, and the last together in
 * one sentence where there are too many.
 */
record WindowViews(WindowKinds kinds, Contrast contrast, Map<Method, HouseTakeoff> takeoffs, Density density) {
    /** Glass of an opening, counted in table order. */
    private interface GlassOf extends Function<Integer, Glass> {}

    /** Today, without a method, or after the work by one. */
    private record Stage(String name, Optional<Method> method) {
        static Stream<Stage> inOrder(Contrast contrast) {
            return Stream.concat(
                    Stream.of(new Stage("today", Optional.empty())),
                    contrast.both().stream().map(method -> new Stage(method.label(), Optional.of(method))));
        }
    }

    /** Windows by what they are: drawn, then in lines. */
    List<WindowSection> sections() {
        List<Group> drawn = drawnGroups();
        List<Group> listed = listedGroups();
        double scale = pxPerIn();
        return kinds.groups().stream()
                .map(Group::style)
                .distinct()
                .map(style -> new WindowSection(
                        style.inWords(),
                        of(style, drawn).map(group -> drawn(group, scale)).toList(),
                        of(style, listed).map(this::line).toList()))
                .filter(section ->
                        !section.drawn().isEmpty() || !section.listed().isEmpty())
                .toList();
    }

    private static Stream<Group> of(Style style, List<Group> groups) {
        return groups.stream().filter(group -> group.style().equals(style));
    }

    private WindowGroup drawn(Group group, double pxPerIn) {
        return new WindowGroup(
                group.mark(),
                Numbers.count(group.openings().size(), "window", "windows") + " " + group.size(),
                where(group),
                views(group, pxPerIn));
    }

    /** What is neither drawn nor listed; empty: nothing. */
    String rest() {
        List<Group> rest = new ArrayList<>(kinds.groups());
        rest.removeAll(drawnGroups());
        rest.removeAll(listedGroups());
        if (rest.isEmpty()) {
            return "";
        }
        List<Integer> openings =
                rest.stream().flatMap(group -> group.openings().stream()).toList();
        double today = sum(openings, this::existing);
        return "And " + Numbers.count(rest.size(), "more kind", "more kinds") + " ("
                + Numbers.count(openings.size(), "window", "windows") + "), together " + ft2(today)
                + " of glass today, " + reduced(openings, contrast.first(), today) + " with "
                + contrast.first().inSentence() + " and "
                + reduced(openings, contrast.second(), today)
                + " with " + contrast.second().inSentence() + ". The page handout.html draws each of them.";
    }

    private String reduced(List<Integer> openings, Method method, double today) {
        double after = sum(openings, replaced(method));
        long less = Math.round(100 * (1 - after / today));
        return ft2(after) + " (" + (less < 0 ? -less + "% more)" : less + "% less)");
    }

    private static double sum(List<Integer> openings, GlassOf glassOf) {
        return openings.stream().mapToDouble(i -> glassOf.apply(i).glassFt2()).sum();
    }

    /** Length of a foot at the common scale, CSS px. */
    double footPx() {
        return 12 * pxPerIn();
    }

    /** Width of the widest drawing, CSS px. */
    static int widestPx(List<WindowSection> sections) {
        return sections.stream()
                .flatMap(section -> section.drawn().stream())
                .flatMap(group -> group.views().stream())
                .mapToInt(WindowView::widthPx)
                .max()
                .orElse(0);
    }

    private List<Group> drawnGroups() {
        return kinds.tellingMost(density.drawn());
    }

    /** Those that tell most of the others. */
    private List<Group> listedGroups() {
        List<Group> drawn = drawnGroups();
        return kinds.tellingMost(drawn.size() + density.listed()).stream()
                .filter(group -> !drawn.contains(group))
                .toList();
    }

    private double pxPerIn() {
        return drawnGroups().stream()
                .map(group -> group.openings().get(0))
                .flatMap(i -> Stream.of(existing(i), replaced(contrast.first()).apply(i)))
                .mapToDouble(glass ->
                        WindowSketch.scale(WindowShape.of(glass), density.drawingWidthPx(), density.drawingHeightPx()))
                .min()
                .orElse(1);
    }

    private String where(Group group) {
        return new Places(takeoffs.get(contrast.second()).house(), density)
                .of(group.openings().stream().map(i -> at(i, contrast.second())).toList());
    }

    private List<WindowView> views(Group group, double pxPerIn) {
        return Stage.inOrder(contrast).map(stage -> view(stage, group, pxPerIn)).toList();
    }

    private WindowView view(Stage stage, Group group, double pxPerIn) {
        WindowSketch sketch = new WindowSketch(
                "Window " + group.mark() + ", " + stage.name(), WindowShape.of(first(stage, group)), pxPerIn);
        return new WindowView(
                stage.name(),
                Figure.of(sketch),
                sketch.widthPx(),
                area(stage, group),
                change(stage, group),
                inches(stage, group));
    }

    private WindowLine line(Group group) {
        return new WindowLine(
                group.mark(),
                group.size(),
                where(group),
                Stage.inOrder(contrast)
                        .map(stage -> Stream.of(area(stage, group), change(stage, group), inches(stage, group))
                                .filter(text -> !text.isEmpty())
                                .collect(Collectors.joining(" ")))
                        .toList());
    }

    private String area(Stage stage, Group group) {
        Glass glass = first(stage, group);
        return fits(glass) ? ft2(glass.glassFt2()) : "does not fit";
    }

    private String inches(Stage stage, Group group) {
        Glass glass = first(stage, group);
        return fits(glass) ? Phrases.size(glass.glassWidthIn(), glass.glassHeightIn()) : "";
    }

    private String change(Stage stage, Group group) {
        return stage.method().filter(method -> fits(first(stage, group))).isPresent()
                ? change(group.openings(), glassOf(stage))
                : "";
    }

    private static boolean fits(Glass glass) {
        return glass.glassFt2() > 0;
    }

    private Glass first(Stage stage, Group group) {
        return glassOf(stage).apply(group.openings().get(0));
    }

    private GlassOf glassOf(Stage stage) {
        return stage.method().map(this::replaced).orElse(this::existing);
    }

    /** Glass lost against today; a range where measured sizes make it differ within the group. */
    private String change(List<Integer> openings, GlassOf glassOf) {
        ToDoubleFunction<Integer> lost =
                i -> 1 - glassOf.apply(i).glassFt2() / existing(i).glassFt2();
        long low = Math.round(100 * openings.stream().mapToDouble(lost).min().orElseThrow());
        long high = Math.round(100 * openings.stream().mapToDouble(lost).max().orElseThrow());
        if (high <= 0 && low < 0) {
            return (low == high ? "" : -high + " to ") + -low + "% more";
        }
        if (low < 0) {
            return -low + "% more to " + high + "% less";
        }
        return (low == high ? "" : low + " to ") + high + "% less";
    }

    private OpeningTakeoff at(int opening, Method method) {
        return takeoffs.get(method).openings().get(opening);
    }

    private Glass existing(int opening) {
        return at(opening, contrast.second()).geometry().existing();
    }

    private GlassOf replaced(Method method) {
        return opening -> at(opening, method).geometry().replaced();
    }

    private static String ft2(double area) {
        return Numbers.plain(area, 1) + " ft\u00b2";
    }
}
