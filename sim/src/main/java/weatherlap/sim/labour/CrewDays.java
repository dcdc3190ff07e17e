package weatherlap.sim.labour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import weatherlap.sim.Check;

/**
 * The working days of a house: openings packed whole, because a wall is not left open overnight, and what the house and its walls need
 * once (setting up, siding, clearing) poured into the time that is left, because it can be broken off at any hour.
 *
 * <p>First fit, longest opening first (ties by table order), over days that each lose their own overhead. An opening longer than a day
 * starts on a free morning and runs on; what is left of its last day is free again.
 *
 * @param days whole days, at least 1
 * @param dayOfOpening the day an opening is started, from 1, in the order of the openings
 */
public record CrewDays(int days, List<Integer> dayOfOpening) {
    /** Minutes that a sum of rounded numbers may exceed a day by. */
    private static final double SLACK_MINUTES = 1e-6;

    public CrewDays {
        Check.within("days", days, 1, Integer.MAX_VALUE);
        dayOfOpening = List.copyOf(dayOfOpening);
    }

    /**
     * Packs a house.
     *
     * @param dayMinutes working minutes of a day less what every day loses, min
     * @param sharedMinutes what the house and its walls need once, crew minutes
     * @param openingMinutes of each opening by itself, crew minutes
     * @throws IllegalArgumentException when a day's overhead leaves no time
     */
    public static CrewDays pack(double dayMinutes, double sharedMinutes, List<Double> openingMinutes) {
        Check.positive("time left in a working day, min,", dayMinutes);
        List<Double> left = new ArrayList<>();
        Integer[] started = new Integer[openingMinutes.size()];
        Comparator<Integer> longestFirst = Comparator.comparing(openingMinutes::get, Comparator.reverseOrder());
        IntStream.range(0, started.length).boxed().sorted(longestFirst).forEach(opening -> {
            started[opening] = start(left, openingMinutes.get(opening), dayMinutes);
        });
        double free = left.stream().mapToDouble(minutes -> minutes).sum();
        take(left, sharedMinutes - free, dayMinutes);
        return new CrewDays(Math.max(1, left.size()), Arrays.asList(started));
    }

    private static int start(List<Double> left, double minutes, double dayMinutes) {
        for (int day = 0; day < left.size(); day++) {
            if (minutes <= left.get(day) + SLACK_MINUTES) {
                left.set(day, left.get(day) - minutes);
                return day + 1;
            }
        }
        int first = left.size() + 1;
        take(left, minutes, dayMinutes);
        return first;
    }

    /** Opens as many days as the minutes need. */
    private static void take(List<Double> left, double minutes, double dayMinutes) {
        double rest = minutes;
        while (rest > SLACK_MINUTES) {
            left.add(dayMinutes - Math.min(dayMinutes, rest));
            rest -= dayMinutes;
        }
    }
}
