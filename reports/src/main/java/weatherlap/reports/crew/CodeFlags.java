package weatherlap.reports.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.sim.geometry.CodeChange;
import weatherlap.sim.geometry.CodeCheck;
import weatherlap.sim.geometry.CodeRule;
import weatherlap.sim.geometry.ResidentialCode;

/** Flags of the model code in sentences: a paragraph a rule, windows of which the same is said named together. */
final class CodeFlags {
    private CodeFlags() {}

    static List<String> of(List<Window> windows) {
        return Stream.of(CodeRule.values())
                .map(rule -> paragraph(rule, flagged(rule, windows)))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    private record Flagged(Window window, CodeChange change) {}

    /** Those that are worse than today first. */
    private static List<Flagged> flagged(CodeRule rule, List<Window> windows) {
        return windows.stream()
                .flatMap(window -> window.takeoff().geometry().codes().stream()
                        .filter(change -> change.rule() == rule && change.flag().isPresent())
                        .map(change -> new Flagged(window, change)))
                .sorted(Comparator.comparing(flagged -> !flagged.change().lost()))
                .toList();
    }

    private static String paragraph(CodeRule rule, List<Flagged> flagged) {
        if (flagged.isEmpty()) {
            return "";
        }
        Map<String, List<Window>> said = new LinkedHashMap<>();
        String tail = sharedTail(flagged);
        for (Flagged one : flagged) {
            String finding = one.change().after().finding();
            String today = one.change().lost()
                    ? ", WORSE than today (" + without(one.change().before().finding(), tail) + ")"
                    : "";
            said.computeIfAbsent(without(finding, tail) + today, text -> new ArrayList<>())
                    .add(one.window());
        }
        List<String> parts = new ArrayList<>();
        said.forEach((finding, those) -> parts.add(Window.list(those).toLowerCase(Locale.ROOT) + ": " + finding));
        String relief = rule == CodeRule.ESCAPE
                        && flagged.stream().anyMatch(f -> f.change().after().verdict() == CodeCheck.Verdict.FAILS)
                ? " " + ResidentialCode.REPLACEMENT_RELIEF
                : "";
        return rule.section() + ", " + name(rule) + ": " + String.join("; ", parts) + tail + "." + relief;
    }

    private static String without(String finding, String tail) {
        return finding.endsWith(tail) ? finding.substring(0, finding.length() - tail.length()) : finding;
    }

    /** What stands from the first bracket on at the end of every finding, to be said once. */
    private static String sharedTail(List<Flagged> flagged) {
        String first = flagged.get(0).change().after().finding();
        int at = first.indexOf(" (");
        String tail = at < 0 ? "" : first.substring(at);
        boolean shared =
                flagged.stream().allMatch(f -> f.change().after().finding().endsWith(tail));
        return shared ? tail : "";
    }

    private static String name(CodeRule rule) {
        return switch (rule) {
            case ESCAPE -> "escape";
            case LIGHT -> "light";
            case VENTILATION -> "air";
            case SAFETY_GLAZING -> "safety glazing";
            case FALL -> "falls through a window";
        };
    }
}
