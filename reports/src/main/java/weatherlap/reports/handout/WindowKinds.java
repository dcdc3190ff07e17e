package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;

/**
 * Windows of one size and kind as groups, marked with letters; with numbers where the letters do not suffice.
 *
 * @param groups in table order, those of one style together
 */
record WindowKinds(List<Group> groups) {
    private static final int LETTERS = 26;

    /** What a window is, but for its size. */
    record Style(FrameMaterial material, Operation operation, Operation newOperation, int units) {
        String inWords(FamilyWords words) {
            String named = words.of("window.style", words.name(material), words.name(operation));
            return FamilyWords.capital(named)
                    + (units == 1 ? "" : words.of("window.joined", Integer.toString(units)))
                    + (newOperation == operation ? "" : words.of("window.to_be", words.name(newOperation)));
        }
    }

    private record Kind(Style style, double widthIn, double heightIn) {
        static Kind of(Opening opening) {
            return new Kind(
                    new Style(opening.frame().material(), opening.operation(), opening.newOperation(), opening.units()),
                    opening.frame().widthIn(),
                    opening.frame().heightIn());
        }
    }

    /**
     * Like windows.
     *
     * @param openings which, counted in table order
     * @param differenceFt2 glass that the first method shows more than the second, all of them together
     */
    record Group(
            String mark, Style style, double widthIn, double heightIn, List<Integer> openings, double differenceFt2) {
        String size() {
            return Phrases.size(widthIn, heightIn);
        }
    }

    static WindowKinds of(Contrast contrast, Map<Method, HouseTakeoff> takeoffs) {
        List<OpeningTakeoff> full = takeoffs.get(contrast.first()).openings();
        List<OpeningTakeoff> insert = takeoffs.get(contrast.second()).openings();
        Map<Style, LinkedHashMap<Kind, List<Integer>>> styles = IntStream.range(0, insert.size())
                .boxed()
                .collect(inOrder(
                        i -> Kind.of(insert.get(i).opening()).style(),
                        inOrder(i -> Kind.of(insert.get(i).opening()), Collectors.toList())));
        int kinds = styles.values().stream().mapToInt(Map::size).sum();
        List<Group> groups = new ArrayList<>();
        styles.values()
                .forEach(style -> style.forEach((kind, openings) -> groups.add(new Group(
                        mark(groups.size(), kinds),
                        kind.style(),
                        kind.widthIn(),
                        kind.heightIn(),
                        openings,
                        openings.stream()
                                .mapToDouble(i -> glassFt2(full.get(i)) - glassFt2(insert.get(i)))
                                .sum()))));
        return new WindowKinds(groups);
    }

    private static <K, V> Collector<Integer, ?, LinkedHashMap<K, V>> inOrder(
            Function<Integer, K> key, Collector<Integer, ?, V> values) {
        return Collectors.groupingBy(key, LinkedHashMap::new, values);
    }

    private static double glassFt2(OpeningTakeoff opening) {
        return opening.geometry().replaced().glassFt2();
    }

    private static String mark(int number, int groups) {
        return groups > LETTERS ? String.valueOf(number + 1) : String.valueOf((char) ('A' + number));
    }

    /** The mark of the group that an opening belongs to. */
    String mark(int opening) {
        return groups.stream()
                .filter(group -> group.openings().contains(opening))
                .findFirst()
                .orElseThrow()
                .mark();
    }

    /** Those at which the methods differ most in glass, in their order. */
    List<Group> tellingMost(int most) {
        Set<Group> chosen = groups.stream()
                .sorted(Comparator.comparingDouble((Group group) -> -Math.abs(group.differenceFt2())))
                .limit(most)
                .collect(Collectors.toSet());
        return groups.stream().filter(chosen::contains).toList();
    }
}
