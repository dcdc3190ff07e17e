package weatherlap.sim.labour;

import java.util.List;
import weatherlap.sim.Check;
import weatherlap.sim.Sum;

/**
 * What a crew does on which day. Days go wall by wall: a team that has begun a wall stays until it is closed, so that ladders and staging
 * move once a wall. Runs of openings that one siding ties together ({@link weatherlap.sim.quantity.SidingRun}) are opened once and closed
 * the same day where they fit into one; what does not fit into the rest of a day waits for the morning. A run longer than a day begins in
 * the morning and goes on: its siding stays down overnight, but no opening does: each is set and closed on the day it is begun, unless it
 * takes longer than a day itself.
 *
 * <pre>
 * teams   1 of a crew of one or two, 2 of a larger one, each half as fast as the crew; a team takes its next wall when it is free
 * wall    in the morning the one of most minutes; later the one of most minutes that fits whole into the rest of the day, or else
 *         the first of several runs of which fits; equal ones in table order
 * house   what a house needs once (unloading, walking round) fills the time that is left, and opens days where none is
 * </pre>
 *
 * <p>Common practice, no source. Minutes are means: a slow day moves what follows.
 *
 * @param days working days, at least 1
 * @param dayOfOpening the day an opening is begun, from 1, in the order of the house's openings
 * @param stints in the order of days, then of teams
 */
public record DayPlan(int days, List<Integer> dayOfOpening, List<Stint> stints) {
    public DayPlan {
        Check.within("days", days, 1, Integer.MAX_VALUE);
        dayOfOpening = List.copyOf(dayOfOpening);
        stints = List.copyOf(stints);
    }

    /**
     * A team's work on one run within one day.
     *
     * @param day from 1
     * @param team from 1
     * @param wall position in the order of the house's walls
     * @param openings begun, as positions in the wall's order; none where a run of a day before goes on
     * @param opens whether the run's siding comes down today
     * @param closes whether it goes back today
     */
    public record Stint(int day, int team, int wall, List<Integer> openings, boolean opens, boolean closes) {
        public Stint {
            openings = List.copyOf(openings);
        }
    }

    /**
     * Work on one wall, person-minutes.
     *
     * @param setup once before its first run
     * @param runs from the left
     */
    public record Wall(double setup, List<Run> runs) {
        public Wall {
            Check.notNegative("minutes of a wall", setup);
            runs = List.copyOf(runs);
        }

        double minutes() {
            return setup + Sum.of(runs, Run::minutes);
        }
    }

    /**
     * Work on one run, person-minutes.
     *
     * @param openings positions in the wall's order
     * @param siding to take down and put back
     * @param openingMinutes of each of the openings by itself
     */
    public record Run(List<Integer> openings, double siding, List<Double> openingMinutes) {
        public Run {
            Check.notNegative("minutes of siding", siding);
            openings = List.copyOf(openings);
            openingMinutes = List.copyOf(openingMinutes);
        }

        double minutes() {
            return siding + Sum.of(openingMinutes);
        }
    }

    /**
     * Plans a house.
     *
     * @param dayMinutes of a working day, less what every day loses
     * @param crew people
     * @param houseMinutes what the house needs once, person-minutes
     * @throws IllegalArgumentException when a day's overhead leaves no time
     */
    public static DayPlan of(double dayMinutes, int crew, double houseMinutes, List<Wall> walls) {
        Check.positive("time left in a working day, min,", dayMinutes);
        return new DayPlanner(dayMinutes, crew, walls).plan(houseMinutes);
    }
}
