package weatherlap.analysis.tables;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import weatherlap.analysis.plan.HouseChoice;

/**
 * A part of a house, with the house and what was chosen for it: what a row of a house's tables is made from.
 *
 * @param <P> such as an opening's result or a method
 */
public record InHouse<P>(HouseChoice choice, P part) {
    public String houseId() {
        return choice.result().house().id();
    }

    /** The parts of houses, house by house. */
    public static <P> List<InHouse<P>> each(List<HouseChoice> choices, Function<HouseChoice, Stream<P>> parts) {
        return choices.stream()
                .flatMap(choice -> parts.apply(choice).map(part -> new InHouse<>(choice, part)))
                .toList();
    }
}
