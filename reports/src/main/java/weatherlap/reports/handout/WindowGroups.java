package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import weatherlap.charts.MethodStyle;
import weatherlap.charts.Numbers;
import weatherlap.charts.drawing.Piece;
import weatherlap.charts.drawing.WindowDrawing;
import weatherlap.charts.drawing.WindowSketch;
import weatherlap.reports.handout.Handout.WindowGroup;
import weatherlap.reports.handout.Handout.WindowView;
import weatherlap.reports.page.Figure;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.geometry.Glass;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.geometry.Part;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;

/** Windows of one size and kind as groups, marked with letters, drawn at one scale. */
final class WindowGroups {
    private static final double MOST_WIDTH_PX = 56;
    private static final double MOST_HEIGHT_PX = 50;
    private static final int LETTERS = 26;

    /** What like windows have in common. */
    private record Kind(
            Operation operation,
            Operation newOperation,
            int units,
            double widthIn,
            double heightIn,
            FrameMaterial material) {
        static Kind of(Opening opening) {
            return new Kind(
                    opening.operation(),
                    opening.newOperation(),
                    opening.units(),
                    opening.frameWidthIn(),
                    opening.frameHeightIn(),
                    opening.existingMaterial());
        }
    }

    private final House house;
    private final Map<Method, HouseTakeoff> takeoffs;
    private final Map<Kind, List<Integer>> members = new LinkedHashMap<>();

    private WindowGroups(Map<Method, HouseTakeoff> takeoffs) {
        this.takeoffs = new EnumMap<>(takeoffs);
        house = takeoffs.get(Method.INSERT).house();
        List<OpeningTakeoff> openings = takeoffs.get(Method.INSERT).openings();
        for (int i = 0; i < openings.size(); i++) {
            members.computeIfAbsent(Kind.of(openings.get(i).opening()), kind -> new ArrayList<>())
                    .add(i);
        }
    }

    static WindowGroups of(Map<Method, HouseTakeoff> takeoffs) {
        return new WindowGroups(takeoffs);
    }

    /** The letter of the group that an opening belongs to; openings are counted in table order. */
    String mark(int opening) {
        int number = 0;
        for (List<Integer> group : members.values()) {
            if (group.contains(opening)) {
                return mark(number, members.size());
            }
            number++;
        }
        throw new IllegalArgumentException("No opening " + opening);
    }

    private static String mark(int number, int groups) {
        return groups > LETTERS ? String.valueOf(number + 1) : String.valueOf((char) ('A' + number));
    }

    List<WindowGroup> drawn() {
        List<WindowGroup> groups = new ArrayList<>();
        members.forEach((kind, openings) -> groups.add(group(mark(groups.size(), members.size()), kind, openings)));
        return groups;
    }

    /** Length of a foot at the common scale, CSS px. */
    double footPx() {
        return 12 * pxPerIn();
    }

    private double pxPerIn() {
        return members.values().stream()
                .map(openings -> openings.get(0))
                .flatMap(i -> Stream.of(view(existing(i)), view(replaced(i, Method.FULL_FLANGE))))
                .mapToDouble(view -> WindowSketch.scale(view, MOST_WIDTH_PX, MOST_HEIGHT_PX))
                .min()
                .orElse(1);
    }

    private WindowGroup group(String mark, Kind kind, List<Integer> openings) {
        String operation = Phrases.of(kind.operation());
        String becomes = kind.newOperation() == kind.operation() ? "" : ", to be " + Phrases.of(kind.newOperation());
        String name = openings.size() + " \u00d7 " + Phrases.of(kind.material()) + " " + operation
                + (kind.units() == 1 ? "" : ", " + kind.units() + " joined") + becomes;
        return new WindowGroup(
                mark,
                name,
                Phrases.size(kind.widthIn(), kind.heightIn()),
                where(openings),
                List.of(
                        view("today", mark, openings, this::existing),
                        view(MethodStyle.FULL_FLANGE.label(), mark, openings, i -> replaced(i, Method.FULL_FLANGE)),
                        view(MethodStyle.INSERT.label(), mark, openings, i -> replaced(i, Method.INSERT))));
    }

    /** Rooms, then the keys wall by wall. */
    private String where(List<Integer> openings) {
        Set<String> rooms = new LinkedHashSet<>();
        Map<String, List<String>> walls = new LinkedHashMap<>();
        for (int i : openings) {
            OpeningTakeoff at = at(i, Method.INSERT);
            rooms.add(Phrases.of(at.opening().room()));
            walls.computeIfAbsent(Phrases.wall(house, at.elevation()), wall -> new ArrayList<>())
                    .add(at.opening().id());
        }
        List<String> places = new ArrayList<>();
        walls.forEach((wall, ids) -> places.add(wall + " " + String.join(", ", ids)));
        return String.join(", ", rooms) + ": " + String.join("; ", places);
    }

    private interface GlassOf {
        Glass of(int opening);
    }

    private WindowView view(String method, String mark, List<Integer> openings, GlassOf glassOf) {
        int first = openings.get(0);
        Glass glass = glassOf.of(first);
        WindowDrawing.View view = view(glass);
        Figure figure = Figure.of(new WindowSketch("Window " + mark + ", " + method, view, pxPerIn()));
        if (glass.glassFt2() <= 0) {
            return new WindowView(method, figure, "does not fit", "", "");
        }
        String change = method.equals("today") ? "" : change(openings, glassOf);
        return new WindowView(
                method,
                figure,
                Numbers.plain(glass.glassFt2(), 1) + " ft\u00b2",
                change,
                Phrases.size(glass.glassWidthIn(), glass.glassHeightIn()));
    }

    /** Glass lost against today; a range where measured sizes make it differ within the group. */
    private String change(List<Integer> openings, GlassOf glassOf) {
        ToDoubleFunction<Integer> lost =
                i -> 1 - glassOf.of(i).glassFt2() / existing(i).glassFt2();
        long low = Math.round(100 * openings.stream().mapToDouble(lost).min().orElseThrow());
        long high = Math.round(100 * openings.stream().mapToDouble(lost).max().orElseThrow());
        if (low < 0 || high < 0) {
            return -high == -low ? -low + "\u202f% more" : "up to " + -low + "\u202f% more";
        }
        return (low == high ? "" : low + " to ") + high + "\u202f% less";
    }

    private OpeningTakeoff at(int opening, Method method) {
        return takeoffs.get(method).openings().get(opening);
    }

    private Glass existing(int opening) {
        return at(opening, Method.INSERT).geometry().existing();
    }

    private Glass replaced(int opening, Method method) {
        OpeningGeometry geometry = at(opening, method).geometry();
        return geometry.replaced();
    }

    private static WindowDrawing.View view(Glass glass) {
        List<Piece> pieces = glass.glassFt2() <= 0
                ? List.of()
                : glass.pieces().stream()
                        .filter(piece -> !piece.rect().isEmpty())
                        .map(piece -> new Piece(
                                kind(piece.part()),
                                piece.rect().leftIn(),
                                piece.rect().bottomIn(),
                                piece.rect().widthIn(),
                                piece.rect().heightIn()))
                        .toList();
        return new WindowDrawing.View(pieces, glass.glassFt2(), 0);
    }

    private static Piece.Kind kind(Part part) {
        return switch (part) {
            case GLASS -> Piece.Kind.GLASS;
            case SASH -> Piece.Kind.SASH;
            case FRAME -> Piece.Kind.FRAME;
            case MULL_POST -> Piece.Kind.MULL_POST;
            case OLD_FRAME -> Piece.Kind.OLD_FRAME;
            case GAP -> Piece.Kind.GAP;
        };
    }
}
