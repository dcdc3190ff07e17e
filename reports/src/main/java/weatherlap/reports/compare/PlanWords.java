package weatherlap.reports.compare;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Limit;
import weatherlap.analysis.words.InWords;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseResult;

/** What to do at one house, wall by wall, and what closes a method there. */
final class PlanWords {
    private PlanWords() {}

    /** The plan in a word: a method, or both. */
    static String word(HouseChoice choice) {
        return choice.family().single().map(Words::of).orElse("both");
    }

    /** The plan in a line, and how sure the cost alone is. */
    static String line(HouseChoice choice) {
        HouseResult house = choice.result();
        Method cheaper = house.preferred();
        String sure = "cheaper in " + Words.percent(house.preferredProbability(), 0) + " of draws";
        return choice.family()
                .single()
                .map(one -> one == cheaper
                        ? Words.of(one) + ", " + sure
                        : Words.of(one) + "; " + cheaper.inSentence() + ", " + sure + ", is closed")
                .orElseGet(() -> "both: " + walls(choice));
    }

    /** Sentences: the walls of a mixed plan, and what is closed where. Empty where one method does it all and nothing is closed. */
    static Stream<String> sentences(HouseChoice choice) {
        Stream<String> mixed = choice.family().single().isPresent()
                ? Stream.empty()
                : Stream.of("Cheapest for the family: " + walls(choice) + ".");
        return Stream.concat(mixed, closed(choice));
    }

    private static String walls(HouseChoice choice) {
        Map<Method, List<String>> walls = choice.family().byElevation().entrySet().stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getValue, TreeMap::new, Collectors.mapping(Map.Entry::getKey, Collectors.toList())));
        return walls.entrySet().stream()
                .map(entry -> Words.of(entry.getKey()) + " at " + InWords.list(entry.getValue()))
                .collect(Collectors.joining("; "));
    }

    private static Stream<String> closed(HouseChoice choice) {
        return Stream.of(Method.values())
                .filter(method -> !choice.closed(method).isEmpty())
                .map(method -> {
                    String where = choice.closed(method).stream()
                            .map(limit -> at(choice, method, limit) + ", " + limit.words())
                            .collect(Collectors.joining("; "));
                    return InWords.capital(method.inSentence()) + " is closed: " + where + ".";
                });
    }

    private static String at(HouseChoice choice, Method method, Limit limit) {
        List<String> walls = choice.closed().entrySet().stream()
                .filter(wall -> wall.getValue().get(method).contains(limit))
                .map(Map.Entry::getKey)
                .toList();
        return walls.size() == choice.closed().size() ? "at every wall" : "at " + InWords.list(walls);
    }
}
