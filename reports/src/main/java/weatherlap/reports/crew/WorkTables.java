package weatherlap.reports.crew;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.TableView;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.material.MaterialLine;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.work.WorkTakeoff;

/** Days, what is bought and how long each step takes. */
final class WorkTables {
    /** Units of drivers that are symbols and have no plural. */
    private static final Set<String> MEASURES = Set.of("in.", "ft", "ft²", "in³");

    private WorkTables() {}

    static TableView days(WorkTakeoff work, List<Window> windows) {
        TableView.Builder table = TableView.of(
                        "Windows by day, none left open overnight; siding, staging and clearing fill the time left")
                .texts("Day", "Start on")
                .numbers("Person-hours");
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
                    started.isEmpty() ? "no other: siding, clearing, what goes on" : Window.list(started),
                    started.isEmpty() ? "" : Numbers.plain(Units.minutesToHours(minutes), 1));
        }
        return table.build();
    }

    static TableView pickList(HouseTakeoff house) {
        TableView.Builder table = TableView.of("Pick list, in whole packages; waste included")
                .texts("Item")
                .numbers("Needed", "In a package", "Take");
        Map<String, Integer> units = new LinkedHashMap<>();
        house.openings()
                .forEach(o -> units.merge(
                        "New unit, " + InWords.of(o.opening().newOperation()),
                        o.geometry().order().units(),
                        Integer::sum));
        units.forEach((name, count) ->
                table.row(name, Integer.toString(count), "by the size tables", Integer.toString(count)));
        house.work().materials().forEach(line -> table.row(pick(line)));
        return table.build();
    }

    private static String[] pick(MaterialLine line) {
        double needed = line.usedStock() * (1 + line.item().wasteFraction());
        String unit = unit(line.item().unit());
        return new String[] {
            line.item().tradeName(),
            Numbers.plain(needed, needed < 10 ? 1 : 0) + " " + unit,
            Numbers.plain(line.item().packageSize(), line.item().packageSize() % 1 == 0 ? 0 : 1) + " " + unit,
            Numbers.plain(line.packages(), 0)
        };
    }

    private static String unit(String unit) {
        return switch (unit) {
            case "in3" -> "in³";
            case "ft2" -> "ft²";
            default -> unit;
        };
    }

    /** Every step, its minutes added up over the house, in two halves. */
    static List<TableView> labour(WorkTakeoff work) {
        List<String[]> rows = steps(work);
        int half = (rows.size() + 1) / 2;
        return List.of(
                table("Expected person-minutes", rows.subList(0, half)),
                table("Expected person-minutes, the rest", rows.subList(half, rows.size())));
    }

    private static TableView table(String caption, List<String[]> rows) {
        TableView.Builder table = TableView.of(caption).texts("Step").numbers("How much", "Minutes");
        rows.forEach(table::row);
        return table.build();
    }

    private static List<String[]> steps(WorkTakeoff work) {
        List<String[]> rows = new ArrayList<>();
        Map<LabourStep, List<LabourLine>> steps = new LinkedHashMap<>();
        work.lines().forEach(line -> steps.computeIfAbsent(line.step(), step -> new ArrayList<>())
                .add(line));
        work.assumptions().steps(work.method()).filter(steps::containsKey).forEach(step -> {
            List<LabourLine> lines = steps.get(step);
            double quantity = lines.stream().mapToDouble(LabourLine::quantity).sum();
            double minutes = LabourLine.meanMinutes(lines);
            rows.add(new String[] {
                step.tradeName(), counted(quantity, step.driver().unit()), Numbers.plain(minutes, 0)
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
