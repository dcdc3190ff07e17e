package weatherlap.reports.owner;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.OpeningResult;

/**
 * The likely leak that stands at most openings, by the method of the two that leaves more of what is in the wall.
 *
 * @param cause in words of the trade; empty where nothing leaks
 * @param openings at which it is the likeliest
 * @param of so many openings looked at
 */
public record LeakToFind(Optional<String> cause, long openings, long of) {
    static LeakToFind of(List<HouseResult> houses) {
        List<OpeningResult> leaving =
                houses.stream().flatMap(LeakToFind::leaving).toList();
        Map<String, Long> counts = leaving.stream()
                .filter(opening -> !opening.leakCauses().isEmpty())
                .collect(Collectors.groupingBy(
                        opening -> opening.leakCauses().get(0).tradeName(), Collectors.counting()));
        Optional<String> most = counts.keySet().stream()
                .min(Comparator.comparing((String cause) -> -counts.get(cause)).thenComparing(Function.identity()));
        return new LeakToFind(most, most.map(counts::get).orElse(0L), leaving.size());
    }

    private static Stream<OpeningResult> leaving(HouseResult house) {
        return house.contrast().leaves().stream()
                .flatMap(method -> house.openings().stream().filter(opening -> opening.method() == method));
    }
}
