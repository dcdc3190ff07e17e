package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.handout.Handout.Named;
import weatherlap.sim.code.CodeChange;
import weatherlap.sim.code.CodeCheck.Verdict;
import weatherlap.sim.code.CodeRule;
import weatherlap.sim.code.RoomChange;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;

/** Code flags as plain sentences, one a rule: how many rooms or windows fall short today and by either method, and which. */
record CodeWords(WindowKinds kinds, Map<Method, HouseTakeoff> takeoffs, Density density) {
    private static final int MARKS = 8;

    private static final List<CodeRule> GLAZING =
            List.of(CodeRule.SAFETY_GLAZING, CodeRule.WET_GLAZING, CodeRule.STAIR_GLAZING);

    List<Named> lines() {
        return Stream.of(
                        new Named("Way out (" + CodeRule.ESCAPE.section() + ")", escape()),
                        new Named("Light and air (" + CodeRule.LIGHT.section() + ")", lightAndAir()),
                        new Named(
                                "Safety glass (IRC 2018 R308.4)",
                                either(
                                        GLAZING,
                                        "may need safety glass: low, or near a tub or steps",
                                        "may need safety glass: low, or near a tub or steps")),
                        new Named(
                                "Falls (" + CodeRule.FALL.section() + ")",
                                either(
                                        List.of(CodeRule.FALL),
                                        "opens low and high above the ground and may need a guard",
                                        "open low and high above the ground and may need guards")))
                .filter(line -> !line.words().isEmpty())
                .toList();
    }

    private String escape() {
        List<RoomChange> rooms = rooms(CodeRule.ESCAPE, last());
        int today = RoomChange.shortBefore(rooms);
        if (today == 0
                && takeoffs.keySet().stream()
                        .allMatch(method -> RoomChange.shortAfter(rooms(CodeRule.ESCAPE, method)) == 0)) {
            long open = rooms.stream()
                    .filter(room -> room.change().after().verdict() == Verdict.OPEN)
                    .count();
            return open == 0
                    ? ""
                    : "Large enough by either method, if the sill is low enough; rooms without a measured sill: " + open
                            + " of " + rooms.size() + ".";
        }
        Set<String> lost = new LinkedHashSet<>();
        for (Method method : takeoffs.keySet()) {
            rooms(CodeRule.ESCAPE, method).stream()
                    .filter(room -> room.change().worse())
                    .flatMap(room -> room.bearers().stream())
                    .forEach(o -> lost.add(kinds.mark(o)));
        }
        return "Of " + Numbers.count(rooms.size(), "bedroom or basement room", "bedrooms and basement rooms")
                + ", without a window to climb out of: " + shortfalls(CodeRule.ESCAPE)
                + (lost.isEmpty() ? "" : " (new: " + some(lost) + ")") + "."
                + (rooms.stream().allMatch(room -> room.id().isPresent())
                        ? ""
                        : " Windows without a room_id count one by one.")
                + " R310.2.5 may let a like-for-like window stand: ask the building official.";
    }

    private String lightAndAir() {
        List<RoomChange> light = rooms(CodeRule.LIGHT, last());
        boolean said = Stream.of(CodeRule.LIGHT, CodeRule.VENTILATION)
                .flatMap(rule -> takeoffs.keySet().stream().flatMap(method -> rooms(rule, method).stream()))
                .anyMatch(room -> room.change().flag().isPresent());
        return said
                ? "Of " + Numbers.count(light.size(), "room", "rooms") + " with a known floor, too little light: "
                        + shortfalls(CodeRule.LIGHT) + "; too little air: " + shortfalls(CodeRule.VENTILATION) + "."
                : "";
    }

    /** 1 today, 1 after full-flange, 2 after the insert. */
    private String shortfalls(CodeRule rule) {
        return RoomChange.shortBefore(rooms(rule, last()))
                + " today, "
                + takeoffs.keySet().stream()
                        .map(method -> RoomChange.shortAfter(rooms(rule, method)) + " after " + method.inSentence())
                        .collect(Collectors.joining(", "));
    }

    /** What is said of today holds for every method alike. */
    private Method last() {
        return takeoffs.keySet().stream().reduce((a, b) -> b).orElseThrow();
    }

    private List<RoomChange> rooms(CodeRule rule, Method method) {
        return takeoffs.get(method).rooms().stream()
                .filter(room -> room.change().rule() == rule)
                .toList();
    }

    private String either(List<CodeRule> rules, String one, String many) {
        Map<List<Integer>, List<Method>> found = new LinkedHashMap<>();
        for (Method method : takeoffs.keySet()) {
            found.computeIfAbsent(open(rules, method), o -> new ArrayList<>()).add(method);
        }
        String sentence = found.entrySet().stream()
                .filter(entry -> !entry.getKey().isEmpty())
                .map(entry -> phrase(entry.getValue()) + " " + some(entry.getKey()) + " "
                        + (entry.getKey().size() == 1 ? one : many))
                .collect(Collectors.joining("; "));
        return sentence.isEmpty() ? "" : InWords.capital(sentence) + ".";
    }

    private static String phrase(List<Method> methods) {
        return methods.size() == 2
                ? "either way"
                : "with "
                        + InWords.list(methods.stream().map(Method::inSentence).toList());
    }

    /** How many, and which kinds. */
    private String some(List<Integer> openings) {
        Set<String> marks = new LinkedHashSet<>();
        openings.forEach(o -> marks.add(kinds.mark(o)));
        return openings.size() + " (" + some(marks) + ")";
    }

    private List<Integer> open(List<CodeRule> rules, Method method) {
        List<Integer> found = new ArrayList<>();
        var openings = takeoffs.get(method).openings();
        for (int o = 0; o < openings.size(); o++) {
            if (openings.get(o).codes().stream().anyMatch(change -> isOpen(change, rules))) {
                found.add(o);
            }
        }
        return found;
    }

    private static boolean isOpen(CodeChange change, List<CodeRule> rules) {
        return rules.contains(change.rule()) && change.after().verdict() == Verdict.OPEN;
    }

    private String some(Set<String> marks) {
        return density.some(List.copyOf(marks), MARKS);
    }
}
