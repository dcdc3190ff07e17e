package weatherlap.reports.crew;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import weatherlap.analysis.words.Compass;
import weatherlap.analysis.words.Inches;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.drawing.WallDrawing;
import weatherlap.charts.kit.Picture;
import weatherlap.reports.crew.CrewSheet.MethodTables;
import weatherlap.reports.crew.CrewSheet.WallSheet;
import weatherlap.reports.page.Fitted;
import weatherlap.reports.page.Paper;
import weatherlap.reports.page.TableView;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.geometry.SidingPanel;
import weatherlap.sim.geometry.SidingPlan;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;

/** A wall drawn, with what comes down and what is ordered for it. */
final class WallPart {

    /** Share of the paper's height that a drawing may take, so that the words and the tables of a wall stand on the same page. */
    private static final double MOST = 0.7;

    /** What the two rows of a window take of it. */
    private static final double A_WINDOW = 0.047;

    /** What the headings of another method take of it. */
    private static final double A_METHOD = 0.09;

    private static final double LEAST = 0.35;

    private WallPart() {}

    static WallSheet of(HouseTakeoff takeoff, Elevation wall, List<Window> windows, Paper paper) {
        House house = takeoff.house();
        Scenario scenario = takeoff.work().assumptions().scenario();
        List<Window> opened =
                windows.stream().filter(w -> w.method().takesSidingDown()).toList();
        SidingPlan plan = SidingPlan.of(
                house, wall, opened.stream().map(w -> w.takeoff().opening()).toList());
        List<MethodTables> tables = new ArrayList<>();
        Window.byMethod(windows)
                .forEach((method, own) -> tables.add(new MethodTables(
                        SizeTable.of(own, method, takeoff.single().isEmpty()), edges(own, method, scenario))));
        return new WallSheet(
                "Wall " + wall.id() + ", faces " + Compass.of(wall.bearingDeg()) + ": "
                        + Window.list(windows).toLowerCase(Locale.ROOT),
                plan.panelsDown() > 0 ? fitted(drawing(house, wall, windows, plan, paper), paper) : "",
                siding(house, plan, opened, windows.size() - opened.size()),
                tables);
    }

    private static TableView edges(List<Window> windows, Method method, Scenario scenario) {
        return switch (method) {
            case FULL_FLANGE -> EdgeTable.flanged(windows);
            case FULL_FRAME -> EdgeTable.joined(windows, scenario);
            case INSERT -> EdgeTable.capped(windows, scenario);
        };
    }

    /** What the crew takes down. */
    static String piece(House house) {
        return house.cladding().hungInPanels() ? "panel" : "board";
    }

    private static WallDrawing drawing(
            House house, Elevation wall, List<Window> windows, SidingPlan plan, Paper paper) {
        int methods = Window.byMethod(windows).size();
        double share = Math.max(LEAST, MOST - A_WINDOW * windows.size() - A_METHOD * (methods - 1));
        double scale = paper.acrossWidthPx() / WallDrawing.WIDTH_PX;
        return new WallDrawing(
                "Seen from outside",
                piece(house),
                wall.widthIn(),
                wall.eaveHeightIn(),
                plan.panels().stream()
                        .map(panel -> new WallDrawing.Panel(
                                panel.mark(),
                                panel.rect().leftIn(),
                                panel.rect().bottomIn(),
                                panel.rect().widthIn(),
                                panel.rect().heightIn(),
                                panel.down()))
                        .toList(),
                windows.stream()
                        .map(window -> new WallDrawing.Opening(
                                window.mark(),
                                window.takeoff().opening().place().leftIn(),
                                window.takeoff().opening().place().sillHeightIn(),
                                window.takeoff().opening().frame().widthIn(),
                                window.takeoff().opening().frame().heightIn()))
                        .toList(),
                (int) (share * paper.acrossHeightPx() / scale));
    }

    /** The picture as wide as the paper. */
    private static String fitted(Picture picture, Paper paper) {
        return Fitted.in(paper.acrossWidthPx(), Double.MAX_VALUE, picture.svg());
    }

    /** @param closed windows of the wall whose siding stays */
    private static List<String> siding(House house, SidingPlan plan, List<Window> opened, int closed) {
        if (opened.isEmpty()) {
            return List.of("No siding comes down.");
        }
        if (plan.layout().isEmpty()) {
            return List.of(
                    "The courses of this wall were not measured: its siding cannot be drawn. Take down the courses beside each"
                            + " window and one above.");
        }
        List<String> lines = new ArrayList<>();
        String piece = piece(house);
        String with = closed == 0 && opened.size() > 1
                ? "all windows of the wall"
                : Window.list(opened).toLowerCase(Locale.ROOT);
        lines.add(Numbers.count(plan.panelsDown(), piece + " comes", piece + "s come")
                + " down with " + with
                + (opened.size() == 1 ? "" : " at once")
                + (plan.panelsOneAtATime() == plan.panelsDown()
                        ? ""
                        : "; one window at a time it would be " + plan.panelsOneAtATime())
                + ". Exposure "
                + Inches.text(plan.layout().get().exposureIn()) + ", "
                + piece + "s " + Inches.feet(plan.layout().get().lengthIn())
                + " long. Write its letters on the back of each.");
        lines.add("From the top: " + order(plan.takenDown()) + ". Back in the opposite order, each in its own place.");
        if (plan.opensTrimAtEave()) {
            lines.add("The top course comes out of the under-sill trim at the eave and locks into it again.");
        }
        return lines;
    }

    /** P1, P2; O1, O3: course by course. */
    private static String order(List<SidingPanel> panels) {
        Map<Integer, List<String>> courses = new LinkedHashMap<>();
        panels.forEach(panel -> courses.computeIfAbsent(panel.course(), course -> new ArrayList<>())
                .add(panel.mark()));
        return courses.values().stream().map(marks -> String.join(" ", marks)).collect(Collectors.joining(", "));
    }
}
