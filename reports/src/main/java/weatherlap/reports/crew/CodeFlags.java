package weatherlap.reports.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.analysis.words.CodeFindings;
import weatherlap.analysis.words.Numbers;
import weatherlap.sim.code.CodeChange;
import weatherlap.sim.code.CodeCheck;
import weatherlap.sim.code.CodeRule;
import weatherlap.sim.code.RoomChange;

/** Flags of the model code in sentences: a paragraph a rule, windows of which the same is said named together. */
final class CodeFlags {
    private CodeFlags() {}

    static List<String> of(List<Window> windows, List<RoomChange> rooms) {
        return Stream.of(CodeRule.values())
                .map(rule -> paragraph(rule, rooms, flagged(rule, windows, rooms)))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    private record Flagged(List<Window> windows, CodeChange change) {}

    /** Those that are worse than today first. */
    private static List<Flagged> flagged(CodeRule rule, List<Window> windows, List<RoomChange> rooms) {
        Stream<Flagged> found = rule.ofRooms()
                ? rooms.stream()
                        .map(room -> new Flagged(
                                room.openings().stream().map(windows::get).toList(), room.change()))
                : windows.stream()
                        .flatMap(window -> window.takeoff().codes().stream().map(c -> new Flagged(List.of(window), c)));
        return found.filter(one ->
                        one.change().rule() == rule && one.change().flag().isPresent())
                .sorted(Comparator.comparing(one -> !one.change().worse()))
                .toList();
    }

    private static String paragraph(CodeRule rule, List<RoomChange> rooms, List<Flagged> flagged) {
        if (flagged.isEmpty()) {
            return "";
        }
        Map<String, List<Window>> said = new LinkedHashMap<>();
        String tail = sharedTail(flagged);
        for (Flagged one : flagged) {
            String finding = CodeFindings.of(one.change().after());
            String today = one.change().worse()
                    ? ", WORSE than today ("
                            + without(CodeFindings.of(one.change().before()), tail) + ")"
                    : "";
            String together = one.windows().size() > 1 ? " together: " : ": ";
            said.computeIfAbsent(together + without(finding, tail) + today, text -> new ArrayList<>())
                    .addAll(one.windows());
        }
        List<String> parts = new ArrayList<>();
        said.forEach((finding, those) -> parts.add(Window.list(those).toLowerCase(Locale.ROOT) + finding));
        String relief = rule == CodeRule.ESCAPE
                        && flagged.stream().anyMatch(f -> f.change().after().verdict() == CodeCheck.Verdict.FAILS)
                ? " " + CodeFindings.REPLACEMENT_RELIEF
                : "";
        return rule.section() + ", " + name(rule) + ": " + roomCount(rule, rooms) + String.join("; ", parts) + tail
                + "." + relief;
    }

    /** How many rooms fall short before and after; empty for a rule of windows. */
    private static String roomCount(CodeRule rule, List<RoomChange> rooms) {
        if (!rule.ofRooms()) {
            return "";
        }
        List<RoomChange> asked =
                rooms.stream().filter(room -> room.change().rule() == rule).toList();
        return "of " + Numbers.count(asked.size(), "room", "rooms") + ", " + RoomChange.shortBefore(asked)
                + " fell short before, " + RoomChange.shortAfter(asked) + " after"
                + (asked.stream().allMatch(room -> room.id().isPresent())
                        ? ""
                        : " (a window without room_id counts as a room)")
                + ": ";
    }

    private static String without(String finding, String tail) {
        return finding.endsWith(tail) ? finding.substring(0, finding.length() - tail.length()) : finding;
    }

    /** What stands from the first bracket on at the end of every finding, to be said once. */
    private static String sharedTail(List<Flagged> flagged) {
        String first = CodeFindings.of(flagged.get(0).change().after());
        int at = first.indexOf(" (");
        String tail = at < 0 ? "" : first.substring(at);
        boolean shared = flagged.stream()
                .allMatch(f -> CodeFindings.of(f.change().after()).endsWith(tail));
        return shared ? tail : "";
    }

    private static String name(CodeRule rule) {
        return switch (rule) {
            case ESCAPE -> "escape";
            case LIGHT -> "light";
            case VENTILATION -> "air";
            case SAFETY_GLAZING -> "safety glazing";
            case WET_GLAZING -> "safety glazing at tub or shower";
            case STAIR_GLAZING -> "safety glazing at stairs";
            case FALL -> "falls through a window";
        };
    }
}
