package weatherlap.analysis.scenarios;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.scenarios.SideBySide.Headline;
import weatherlap.analysis.tables.Segmentation;
import weatherlap.analysis.tables.Segmentation.Segment;
import weatherlap.sim.house.House;

/**
 * A kind of house under one set of assumptions, and how many of it have another plan than under the first set.
 *
 * @param by what houses are told apart by
 * @param label of the kind
 * @param houses of it
 * @param changed of those, how many have another plan
 */
public record FlipKind(String scenario, Segmentation by, String label, int houses, int changed) {
    /** Every kind under every set but the first, set by set. */
    public static List<FlipKind> of(SideBySide sets) {
        return sets.headlines().stream()
                .skip(1)
                .flatMap(set -> Segmentation.OF_HOUSES.stream().flatMap(by -> of(sets, set, by)))
                .toList();
    }

    private static Stream<FlipKind> of(SideBySide sets, Headline set, Segmentation by) {
        Map<Segment, Long> all =
                counted(by, sets.runs().get(0).choices().stream().map(FlipKind::house));
        Map<Segment, Long> changed = counted(by, set.flips().stream().map(flip -> house(flip.before())));
        return all.entrySet().stream()
                .map(kind -> new FlipKind(
                        set.run().name(),
                        by,
                        kind.getKey().label(),
                        kind.getValue().intValue(),
                        changed.getOrDefault(kind.getKey(), 0L).intValue()));
    }

    private static House house(HouseChoice choice) {
        return choice.result().house();
    }

    private static Map<Segment, Long> counted(Segmentation by, Stream<House> houses) {
        return houses.collect(Collectors.groupingBy(by::of, TreeMap::new, Collectors.counting()));
    }
}
