package weatherlap.analysis.tables;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
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
    public static <P> List<InHouse<P>> each(List<HouseChoice> choices, Function<HouseChoice, Collection<P>> parts) {
        List<InHouse<P>> all = new ArrayList<>();
        for (HouseChoice choice : choices) {
            for (P part : parts.apply(choice)) {
                all.add(new InHouse<>(choice, part));
            }
        }
        return all;
    }
}
