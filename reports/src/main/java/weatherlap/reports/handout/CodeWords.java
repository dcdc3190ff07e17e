package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import weatherlap.charts.kit.InWords;
import weatherlap.charts.kit.Numbers;
import weatherlap.reports.handout.Handout.Named;
import weatherlap.sim.geometry.CodeChange;
import weatherlap.sim.geometry.CodeCheck;
import weatherlap.sim.geometry.CodeCheck.Verdict;
import weatherlap.sim.geometry.CodeRule;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;

/** Code flags as plain sentences, one a rule: how many windows fall short today and by either method, and which. */
record CodeWords(WindowKinds kinds, Map<Method, HouseTakeoff> takeoffs, Density density) {
    private static final int MARKS = 8;

    List<Named> lines() {
        return Stream.of(CodeRule.ESCAPE, CodeRule.LIGHT, CodeRule.SAFETY_GLAZING, CodeRule.FALL)
                .map(this::line)
                .filter(line -> !line.words().isEmpty())
                .toList();
    }

    private Named line(CodeRule rule) {
        return new Named(name(rule), words(rule));
    }

    private static String name(CodeRule rule) {
        String plain =
                switch (rule) {
                    case ESCAPE -> "Way out";
                    case LIGHT, VENTILATION -> "Light and air";
                    case SAFETY_GLAZING -> "Safety glass";
                    case FALL -> "Falls";
                };
        return plain + " (" + rule.section() + ")";
    }

    private String words(CodeRule rule) {
        return switch (rule) {
            case ESCAPE -> escape();
            case LIGHT, VENTILATION -> lightAndAir();
            case SAFETY_GLAZING ->
                either(
                        rule,
                        "has a large, low pane that may need safety glass",
                        "have large, low panes that may need safety glass");
            case FALL ->
                either(
                        rule,
                        "opens low and high above the ground and may need a guard",
                        "open low and high above the ground and may need guards");
        };
    }

    private String escape() {
        int touched = checks(CodeRule.ESCAPE, Method.INSERT, CodeChange::after).size();
        Set<String> today = marked(CodeRule.ESCAPE, Method.INSERT, CodeChange::before, Verdict.FAILS);
        int todayCount = count(CodeRule.ESCAPE, Method.INSERT, CodeChange::before, Verdict.FAILS);
        int full = count(CodeRule.ESCAPE, Method.FULL_FLANGE, CodeChange::after, Verdict.FAILS);
        int insert = count(CodeRule.ESCAPE, Method.INSERT, CodeChange::after, Verdict.FAILS);
        if (todayCount + full + insert == 0) {
            int open = count(CodeRule.ESCAPE, Method.INSERT, CodeChange::after, Verdict.OPEN);
            return open == 0
                    ? ""
                    : "Large enough by either method, if the sill is low enough; sills not measured: " + open + " of "
                            + touched + ".";
        }
        Set<String> lost =
                new LinkedHashSet<>(marked(CodeRule.ESCAPE, Method.INSERT, CodeChange::after, Verdict.FAILS));
        lost.removeAll(today);
        return "Of " + Numbers.count(touched, "bedroom or basement window", "bedroom and basement windows") + ", "
                + todayCount + (todayCount == 1 ? " is" : " are") + " too small to climb out of today, " + full
                + " would be with full-flange and " + insert + " with an insert"
                + (lost.isEmpty() ? "" : " (new: " + some(lost) + ")")
                + ". Some towns let a like-for-like window pass; whether an insert counts is in dispute. Ask first.";
    }

    private String lightAndAir() {
        int fullLight = open(CodeRule.LIGHT, Method.FULL_FLANGE);
        int insertLight = open(CodeRule.LIGHT, Method.INSERT);
        int fullAir = open(CodeRule.VENTILATION, Method.FULL_FLANGE);
        int insertAir = open(CodeRule.VENTILATION, Method.INSERT);
        return fullLight + insertLight + fullAir + insertAir == 0
                ? ""
                : "Some windows alone give a room less than the code asks: for light " + fullLight
                        + " with full-flange and " + insertLight + " with an insert, for air " + fullAir + " and "
                        + insertAir + ". Other windows in the room must make it up.";
    }

    private int open(CodeRule rule, Method method) {
        return count(rule, method, CodeChange::after, Verdict.OPEN);
    }

    private String either(CodeRule rule, String one, String many) {
        List<String> parts = new ArrayList<>();
        for (Method method : Method.values()) {
            int count = count(rule, method, CodeChange::after, Verdict.OPEN);
            if (count > 0) {
                parts.add((method == Method.INSERT ? "with an insert " : "with full-flange ") + count + " ("
                        + some(marked(rule, method, CodeChange::after, Verdict.OPEN)) + ") "
                        + (count == 1 ? one : many));
            }
        }
        return parts.isEmpty() ? "" : InWords.capital(String.join("; ", parts)) + ".";
    }

    private int count(CodeRule rule, Method method, Function<CodeChange, CodeCheck> side, Verdict verdict) {
        return (int) checks(rule, method, side).stream()
                .filter(check -> check.verdict() == verdict)
                .count();
    }

    private List<CodeCheck> checks(CodeRule rule, Method method, Function<CodeChange, CodeCheck> side) {
        return takeoffs.get(method).openings().stream()
                .flatMap(opening -> opening.geometry().codes().stream())
                .filter(change -> change.rule() == rule)
                .map(side)
                .toList();
    }

    private String some(Set<String> marks) {
        return density.some(List.copyOf(marks), MARKS);
    }

    private Set<String> marked(CodeRule rule, Method method, Function<CodeChange, CodeCheck> side, Verdict verdict) {
        Set<String> marks = new LinkedHashSet<>();
        var openings = takeoffs.get(method).openings();
        for (int i = 0; i < openings.size(); i++) {
            boolean hit = openings.get(i).geometry().codes().stream()
                    .anyMatch(change ->
                            change.rule() == rule && side.apply(change).verdict() == verdict);
            if (hit) {
                marks.add(kinds.mark(i));
            }
        }
        return marks;
    }
}
