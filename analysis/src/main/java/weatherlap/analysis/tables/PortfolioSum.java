package weatherlap.analysis.tables;

import java.io.Serializable;
import java.util.List;
import weatherlap.analysis.plan.HouseChoice;

/**
 * Both methods summed up over houses, in memory that does not grow with them. Sums of parts of a portfolio add up to the sum of the whole,
 * but for the rounding of additions in another order.
 */
public final class PortfolioSum implements Serializable {
    private static final long serialVersionUID = 1;

    private final Answer.Sum answer;
    private final Segments.Sum segments = new Segments.Sum();
    private final int draws;

    /** @param draws of every house, 1 or more */
    public PortfolioSum(int draws) {
        this.draws = draws;
        answer = new Answer.Sum(draws);
    }

    /** Takes a house in. */
    public void add(HouseChoice choice) {
        answer.add(choice);
        segments.add(choice.result());
    }

    /**
     * Takes in the sum of other houses.
     *
     * @throws IllegalArgumentException if they have other draws
     */
    public void add(PortfolioSum other) {
        answer.add(other.answer);
        segments.add(other.segments);
    }

    /**
     * What the houses come to.
     *
     * @param shown some of them
     * @throws IllegalArgumentException if no house was taken in
     */
    public Comparison comparison(List<HouseChoice> shown) {
        return new Comparison(answer.answer(), segments.segments(), shown, draws);
    }
}
