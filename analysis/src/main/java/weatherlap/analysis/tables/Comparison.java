package weatherlap.analysis.tables;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.sim.run.Results;

/**
 * Both methods over a portfolio: sums over all of its houses, and single houses to decide on and to show.
 *
 * @param shown all houses, or some evenly spread over the tables where there are many
 * @param draws of every house
 */
public record Comparison(Answer answer, Segments segments, List<HouseChoice> shown, int draws) {
    /** Most houses that are shown, or a few less. */
    public static final int MOST_SHOWN = 500;

    public Comparison {
        shown = List.copyOf(shown);
    }

    /** Whether there are houses that are not shown. */
    public boolean isSample() {
        return shown.size() < answer.houses();
    }

    /** Of so many houses every how many'th is shown, the first among them. */
    public static int step(long houses) {
        return (int) Math.max(1, (houses + MOST_SHOWN - 1) / MOST_SHOWN);
    }

    /** Of the houses shown. */
    public Results results() {
        return new Results(shown.stream().map(HouseChoice::result).toList(), draws);
    }

    /** Adds up while a portfolio is walked through, in constant memory. */
    public static final class Sum {
        private final PortfolioSum sum;
        private final List<HouseChoice> shown = new ArrayList<>();
        private final int step;
        private int houses;

        /**
         * @param draws of every house
         * @param houses about how many will come
         */
        public Sum(int draws, long houses) {
            sum = new PortfolioSum(draws);
            step = step(houses);
        }

        /** Takes a house in, in the order of the portfolio. */
        public void add(HouseChoice choice) {
            if (houses++ % step == 0) {
                shown.add(choice);
            }
            sum.add(choice);
        }

        /** @throws IllegalArgumentException if no house was taken in */
        public Comparison comparison() {
            return sum.comparison(shown);
        }
    }
}
