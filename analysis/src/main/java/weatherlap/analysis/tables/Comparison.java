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

    /** Of the houses shown. */
    public Results results() {
        return new Results(shown.stream().map(HouseChoice::result).toList(), draws);
    }

    /** Adds up while a portfolio is walked through, in constant memory. */
    public static final class Sum {
        private final Answer.Sum answer;
        private final Segments.Sum segments = new Segments.Sum();
        private final List<HouseChoice> shown = new ArrayList<>();
        private final int draws;
        private final int step;
        private int houses;

        /**
         * @param draws of every house
         * @param houses about how many will come
         */
        public Sum(int draws, long houses) {
            this.draws = draws;
            answer = new Answer.Sum(draws);
            step = (int) Math.max(1, (houses + MOST_SHOWN - 1) / MOST_SHOWN);
        }

        /** Takes a house in, in the order of the portfolio. */
        public void add(HouseChoice choice) {
            if (houses++ % step == 0) {
                shown.add(choice);
            }
            answer.add(choice);
            segments.add(choice.result());
        }

        /** @throws IllegalArgumentException if no house was taken in */
        public Comparison comparison() {
            return new Comparison(answer.answer(), segments.segments(), shown, draws);
        }
    }
}
