package weatherlap.analysis.choice;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The choices that no other beats in both cost and risk. */
final class EfficientSet {
    private EfficientSet() {}

    /**
     * A choice to weigh.
     *
     * @param costUsd to be low
     * @param risk to be low
     */
    record Choice(String name, double costUsd, double risk) {
        boolean beats(Choice other) {
            return costUsd <= other.costUsd && risk <= other.risk && (costUsd < other.costUsd || risk < other.risk);
        }
    }

    /** Positions of the efficient choices, cheapest first. */
    static List<Integer> of(List<Choice> choices) {
        return IntStream.range(0, choices.size())
                .boxed()
                .filter(i -> choices.stream().noneMatch(rival -> rival.beats(choices.get(i))))
                .sorted(Comparator.comparingDouble(i -> choices.get(i).costUsd()))
                .toList();
    }
}
