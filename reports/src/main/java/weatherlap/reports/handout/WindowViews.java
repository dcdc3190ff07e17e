package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.charts.drawing.WindowSketch;
import weatherlap.charts.kit.Captioned;
import weatherlap.reports.handout.Handout.WindowGroup;
import weatherlap.reports.handout.Handout.WindowLine;
import weatherlap.reports.handout.Handout.WindowSection;
import weatherlap.reports.handout.Handout.WindowView;
import weatherlap.reports.handout.WindowKinds.Group;
import weatherlap.reports.handout.WindowKinds.Style;
import weatherlap.reports.page.Figure;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.geometry.Glass;
import weatherlap.sim.geometry.Rect;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;

/**
 * The groups of windows as a handout shows them: those that tell most drawn at one scale, the others in lines, and the last together in
 * one sentence where there are too many.
 */
record WindowViews(
        WindowKinds kinds,
        List<Method> methods,
        Map<Method, HouseTakeoff> takeoffs,
        Density density,
        FamilyWords words) {
    /** Glass of an opening, counted in table order. */
    private interface GlassOf extends Function<Integer, Glass> {}

    /** Today, without a method, or after the work by one. */
    private record Stage(String name, Optional<Method> method) {}

    private Stream<Stage> stages() {
        return Stream.concat(
                Stream.of(new Stage(words.of("today"), Optional.empty())),
                methods.stream().map(method -> new Stage(words.name(method), Optional.of(method))));
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
                        style.inWords(words),
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
                words.count(group.openings().size(), "windows"),
                group.size(),
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
        String after = methods.stream()
                .map(method ->
                        words.of("windows.rest.by", reduced(openings, method, today), words.name(method, "sentence")))
                .collect(Collectors.joining(", "));
        return words.count(rest.size(), "windows.rest", words.count(openings.size(), "windows"), ft2(today), after);
    }

    private String reduced(List<Integer> openings, Method method, double today) {
        double after = sum(openings, replaced(method));
        return words.of("windows.rest.glass", ft2(after), percentChange(1 - after / today));
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
                .flatMap(i ->
                        Stream.concat(Stream.of(existing(i)), methods.stream().map(method -> replaced(method)
                                .apply(i))))
                .mapToDouble(glass ->
                        WindowSketch.scale(WindowShape.of(glass), density.drawingWidthPx(), density.drawingHeightPx()))
                .min()
                .orElse(1);
    }

    private String where(Group group) {
        return new Places(takeoffs.get(methods.get(0)).house(), density, words)
                .of(group.openings().stream().map(i -> at(i, methods.get(0))).toList());
    }

    private List<WindowView> views(Group group, double pxPerIn) {
        return stages().map(stage -> view(stage, group, pxPerIn)).toList();
    }

    private WindowView view(Stage stage, Group group, double pxPerIn) {
        Glass glass = first(stage, group);
        String label = words.of("window.drawn", group.mark(), stage.name());
        WindowSketch sketch = new WindowSketch(label, WindowShape.of(glass), pxPerIn);
        return new WindowView(
                stage.name(),
                Figure.of(new Captioned(
                        sketch,
                        label,
                        words.of(
                                "window.seen", label, fits(glass) ? ft2(glass.glassFt2()) : words.of("does.not.fit")))),
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
                stages().map(stage -> Stream.of(area(stage, group), change(stage, group))
                                .filter(text -> !text.isEmpty())
                                .collect(Collectors.joining(" ")))
                        .toList());
    }

    private String area(Stage stage, Group group) {
        Glass glass = first(stage, group);
        return fits(glass) ? ft2(glass.glassFt2()) : words.of("does.not.fit");
    }

    private String inches(Stage stage, Group group) {
        Glass glass = first(stage, group);
        return fits(glass) ? panes(glass) : "";
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

    /** The panes of a window, which are all of one size: 2 panes 27 × 21¼″. */
    private String panes(Glass glass) {
        Rect pane = glass.lites().get(0);
        return words.count(glass.lites().size(), "panes", Phrases.size(pane.widthIn(), pane.heightIn()));
    }

    /** Glass lost against today; a range where measured sizes make it differ within the group. */
    private String change(List<Integer> openings, GlassOf glassOf) {
        ToDoubleFunction<Integer> lost =
                i -> 1 - glassOf.apply(i).glassFt2() / existing(i).glassFt2();
        String low = percentChange(openings.stream().mapToDouble(lost).min().orElseThrow());
        String high = percentChange(openings.stream().mapToDouble(lost).max().orElseThrow());
        return low.equals(high) ? low : words.of("to", low, high);
    }

    private String percentChange(double lost) {
        return new Phrases(words).change(lost);
    }

    private OpeningTakeoff at(int opening, Method method) {
        return takeoffs.get(method).openings().get(opening);
    }

    private Glass existing(int opening) {
        return at(opening, methods.get(0)).geometry().existing();
    }

    private GlassOf replaced(Method method) {
        return opening -> at(opening, method).geometry().replaced();
    }

    private String ft2(double area) {
        return new Phrases(words).ft2(area);
    }
}
