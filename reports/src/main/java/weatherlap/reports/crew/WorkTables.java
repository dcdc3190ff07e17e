package weatherlap.reports.crew;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.analysis.words.StepWords;
import weatherlap.reports.page.TableView;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.house.House;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.material.MaterialLine;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.work.WorkTakeoff;

/** Days, what is bought and how long each step takes. */
final class WorkTables {
    /** Units of drivers that are symbols and have no plural. */
    private static final Set<String> MEASURES = Set.of("united in.", "ft", "ft²", "in³");

    private WorkTables() {}

    static TableView days(WorkTakeoff work, List<Window> windows) {
        TableView.Builder table = TableView.of(
                        "Windows by day and wall, none left open overnight. Hours are those at the windows; siding, ladders, setting up,"
                                + " clearing and the road fill the day")
                .texts("Day", "Start on")
                .numbers("Person-hours at the windows");
        List<Integer> dayOf = work.crewDays().dayOfOpening();
        for (int day = 1; day <= work.crewDays().days(); day++) {
            int today = day;
            List<Window> started = windows.stream()
                    .filter(window -> dayOf.get(window.number() - 1) == today)
                    .toList();
            double minutes = started.stream()
                    .mapToDouble(
                            w -> work.openings().get(w.number() - 1).labour().value())
                    .sum();
            table.row(
                    Integer.toString(day),
                    started.isEmpty() ? "no other: clearing, what goes on" : byWall(started),
                    started.isEmpty() ? "" : Numbers.plain(Units.minutesToHours(minutes), 1));
        }
        return table.build();
    }

    /** front: 1, 2; back: 7. */
    private static String byWall(List<Window> windows) {
        Map<String, List<String>> walls = new LinkedHashMap<>();
        windows.forEach(
                window -> walls.computeIfAbsent(window.takeoff().elevation().id(), wall -> new ArrayList<>())
                        .add(window.mark()));
        return walls.entrySet().stream()
                .map(wall -> wall.getKey() + ": " + String.join(", ", wall.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** Which window gets which method. */
    static TableView methods(List<Window> windows) {
        TableView.Builder table = TableView.of("What is done at each window").texts("No.", "Window", "Method");
        windows.forEach(window ->
                table.row(window.mark(), window.name(), window.method().label()));
        return table.build();
    }

    static TableView pickList(HouseTakeoff house) {
        TableView.Builder table =
                TableView.of("Pick list, in whole packages; waste included").texts("Item", "Take");
        Map<String, Integer> units = new LinkedHashMap<>();
        house.openings()
                .forEach(o -> units.merge(
                        "New unit, " + InWords.of(o.opening().newOperation())
                                + (house.single().isPresent()
                                        ? ""
                                        : ", " + o.geometry().method().label()),
                        o.geometry().order().units(),
                        Integer::sum));
        units.forEach((name, count) -> table.row(name, Integer.toString(count)));
        house.work().materials().stream()
                .filter(line -> line.packages() > 0)
                .forEach(line -> table.row(line.item().tradeName(), take(line)));
        return table.build();
    }

    /** As a yard sells it: 9 cartridges; 4 rolls of 75 ft; of what goes by volume the name says how much a package holds. */
    private static String take(MaterialLine line) {
        Material item = line.item();
        String packages = Numbers.count(line.packages(), item.soldAs(), plural(item.soldAs()));
        double size = item.packageSize();
        String each =
                switch (item.unit()) {
                    case "in3" -> "";
                    case "ft2" -> Numbers.plain(size, 0) + " ft²";
                    case "each" -> size == 1 ? "" : Numbers.plain(size, 0);
                    default -> size == 1 ? "" : Numbers.trimmed(size, 1) + " " + item.unit();
                };
        return packages + (each.isEmpty() ? "" : " of " + each);
    }

    private static String plural(String word) {
        return word + (word.endsWith("x") || word.endsWith("s") ? "es" : "s");
    }

    /** Every step, its minutes added up over the house. */
    static TableView labour(HouseTakeoff house) {
        TableView.Builder table =
                TableView.of("Expected person-minutes").texts("Step").numbers("How much", "Minutes");
        steps(house).forEach(table::row);
        return table.build();
    }

    private static List<String[]> steps(HouseTakeoff house) {
        WorkTakeoff work = house.work();
        List<String[]> rows = new ArrayList<>();
        Map<LabourStep, List<LabourLine>> steps = new LinkedHashMap<>();
        work.lines().forEach(line -> steps.computeIfAbsent(line.step(), step -> new ArrayList<>())
                .add(line));
        work.assumptions().steps().stream().filter(steps::containsKey).forEach(step -> {
            List<LabourLine> lines = steps.get(step);
            double quantity = lines.stream().mapToDouble(LabourLine::quantity).sum();
            double minutes = LabourLine.meanMinutes(lines);
            rows.add(new String[] {
                StepWords.name(step, steps.keySet(), work.methods()),
                counted(quantity, unit(step.driver(), house.house())),
                Numbers.plain(minutes, 0)
            });
        });
        rows.add(new String[] {
            "On the road",
            Numbers.count(work.crewDays().days(), "day", "days"),
            Numbers.plain(work.travel().value(), 0)
        });
        rows.add(new String[] {"In all", "", Numbers.plain(work.labour().value(), 0)});
        return rows;
    }

    /** What a crew calls it. */
    private static String unit(Driver driver, House house) {
        return switch (driver) {
            case ELEVATION -> "wall";
            case OPENING -> "window";
            case PANEL, BROKEN_PANEL -> WallPart.piece(house);
            case FASTENER -> "screw";
            case UNITED_INCH -> "united in.";
            default -> driver.unit();
        };
    }

    /** Things by the word, measures by their symbol: 12 panels, 46 ft. */
    private static String counted(double quantity, String unit) {
        return Numbers.count(Math.round(quantity), unit, MEASURES.contains(unit) ? unit : unit + "s");
    }

    /** Screws of the house's flanges. */
    static int screws(List<Window> windows) {
        return IntStream.range(0, windows.size())
                .map(i -> windows.get(i).takeoff().geometry().fasteners().size())
                .sum();
    }
}
