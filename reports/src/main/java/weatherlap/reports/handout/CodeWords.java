package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.reports.handout.Handout.Named;
import weatherlap.reports.offer.ChoiceWords;
import weatherlap.reports.offer.Choices;
import weatherlap.reports.offer.OfferedPlan;
import weatherlap.reports.words.FamilyWords;
import weatherlap.sim.code.CodeChange;
import weatherlap.sim.code.CodeCheck.Verdict;
import weatherlap.sim.code.CodeRule;
import weatherlap.sim.code.RoomChange;

/** Code flags as plain sentences, one a rule: how many rooms or windows fall short today and by each choice, and which. */
record CodeWords(WindowKinds kinds, Choices choices, ChoiceWords names, Density density) {
    private static final int MARKS = 8;

    private static final List<CodeRule> GLAZING =
            List.of(CodeRule.SAFETY_GLAZING, CodeRule.WET_GLAZING, CodeRule.STAIR_GLAZING);

    List<Named> lines() {
        FamilyWords words = names.words();
        return Stream.of(
                        new Named(words.of("code.escape.name", CodeRule.ESCAPE.section()), escape()),
                        new Named(words.of("code.light.name", CodeRule.LIGHT.section()), lightAndAir()),
                        new Named(words.of("code.glass.name"), either(GLAZING, "code.glass")),
                        new Named(
                                words.of("code.fall.name", CodeRule.FALL.section()),
                                either(List.of(CodeRule.FALL), "code.fall")))
                .filter(line -> !line.words().isEmpty())
                .toList();
    }

    private String escape() {
        FamilyWords words = names.words();
        List<RoomChange> rooms = rooms(CodeRule.ESCAPE);
        boolean sound = RoomChange.shortBefore(rooms) == 0
                && choices.all().stream().allMatch(choice -> RoomChange.shortAfter(choice.rooms(CodeRule.ESCAPE)) == 0);
        if (sound) {
            long open = rooms.stream()
                    .filter(room -> room.change().after().verdict() == Verdict.OPEN)
                    .count();
            return open == 0 ? "" : words.of("code.escape.open", Long.toString(open), Integer.toString(rooms.size()));
        }
        Set<String> lost = new LinkedHashSet<>();
        choices.all().stream()
                .flatMap(choice -> choice.escapesLost().stream())
                .flatMap(room -> room.bearers().stream())
                .forEach(o -> lost.add(kinds.mark(o)));
        return words.of("code.escape.rooms", shortfalls(CodeRule.ESCAPE))
                + (lost.isEmpty() ? "" : words.of("code.escape.new", some(lost)))
                + (rooms.stream().allMatch(room -> room.id().isPresent()) ? "" : words.of("code.escape.alone"))
                + words.of("code.escape.ask");
    }

    private String lightAndAir() {
        FamilyWords words = names.words();
        boolean said = Stream.of(CodeRule.LIGHT, CodeRule.VENTILATION)
                .flatMap(rule -> choices.all().stream().flatMap(choice -> choice.rooms(rule).stream()))
                .anyMatch(room -> room.change().flag().isPresent());
        return said ? words.of("code.light.rooms", shortfalls(CodeRule.LIGHT), shortfalls(CodeRule.VENTILATION)) : "";
    }

    /** 1 of 3 today, 1 with all full-flange, 2 with all inserts; or 1 with every choice. */
    private String shortfalls(CodeRule rule) {
        FamilyWords words = names.words();
        List<String> counts = choices.all().stream()
                .map(choice -> Integer.toString(RoomChange.shortAfter(choice.rooms(rule))))
                .toList();
        String after = counts.size() > 1 && counts.stream().distinct().count() == 1
                ? words.of("code.after.every", counts.get(0))
                : IntStream.range(0, counts.size())
                        .mapToObj(c -> words.of(
                                "code.after",
                                counts.get(c),
                                names.inSentence(choices.all().get(c))))
                        .collect(Collectors.joining(", "));
        return words.of(
                "code.today",
                Integer.toString(RoomChange.shortBefore(rooms(rule))),
                Integer.toString(rooms(rule).size()),
                after);
    }

    /** What is said of today holds for every choice alike. */
    private List<RoomChange> rooms(CodeRule rule) {
        return choices.all().get(0).rooms(rule);
    }

    private String either(List<CodeRule> rules, String key) {
        Map<List<Integer>, List<OfferedPlan>> found = new LinkedHashMap<>();
        for (OfferedPlan choice : choices.all()) {
            found.computeIfAbsent(open(rules, choice), o -> new ArrayList<>()).add(choice);
        }
        String sentence = found.entrySet().stream()
                .filter(entry -> !entry.getKey().isEmpty())
                .map(entry -> names.words()
                        .count(entry.getKey().size(), key, phrase(entry.getValue()), some(marks(entry.getKey()))))
                .collect(Collectors.joining("; "));
        return sentence.isEmpty() ? "" : FamilyWords.capital(sentence) + ".";
    }

    private String phrase(List<OfferedPlan> some) {
        FamilyWords words = names.words();
        return some.size() == choices.all().size()
                ? words.of("code.either")
                : words.of(
                        "code.with",
                        words.list(some.stream().map(names::inSentence).toList()));
    }

    private Set<String> marks(List<Integer> openings) {
        Set<String> marks = new LinkedHashSet<>();
        openings.forEach(o -> marks.add(kinds.mark(o)));
        return marks;
    }

    private static List<Integer> open(List<CodeRule> rules, OfferedPlan choice) {
        List<Integer> found = new ArrayList<>();
        var openings = choice.takeoff().openings();
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
        return density.some(List.copyOf(marks), MARKS, names.words());
    }
}
