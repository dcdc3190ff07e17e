package weatherlap.analysis.leaks;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.Simulator;

/**
 * What the leak score of a house becomes when one row of {@code lap-faults.csv} admits its low share of the water, and its high share,
 * while all else stays drawn as it was.
 *
 * @param low leak score of the house, 0 to 100, with the low share
 * @param high likewise with the high share
 */
public record FaultSwing(LapFault fault, Method method, double low, double high) {
    /** Openings that are enough to see it by: of very many some leak whatever the share, and each row is run twice. */
    private static final int MOST_OPENINGS = 100;

    /** Points by which the score moves. */
    public double width() {
        return high - low;
    }

    /** Every fault that stands after the method, the one that moves the score most first. */
    public static List<FaultSwing> of(Simulator simulator, House whole, Method method) {
        House house = whole.withFirst(MOST_OPENINGS);
        HouseTakeoff takeoff = simulator.takeoff(house).get(method);
        List<LapFault> faults = simulator.assumptions().faults();
        return IntStream.range(0, faults.size())
                .filter(f -> house.openings().anyMatch(opening -> faults.get(f)
                        .canStand(
                                house, opening, method, simulator.assumptions().scenario())))
                .mapToObj(f -> of(simulator, takeoff, f))
                .sorted(Comparator.comparingDouble(FaultSwing::width).reversed())
                .toList();
    }

    private static FaultSwing of(Simulator simulator, HouseTakeoff takeoff, int position) {
        LapFault fault = simulator.assumptions().faults().get(position);
        return new FaultSwing(
                fault,
                takeoff.method(),
                simulator.withAdmitted(position, fault.admitted().low()).leakScore(takeoff),
                simulator.withAdmitted(position, fault.admitted().high()).leakScore(takeoff));
    }

    /** The first of these swings in one line. */
    public static String line(List<FaultSwing> swings, int most) {
        return "Rows of lap-faults.csv that move the leak score most, from the low admitted share to the high one: "
                + swings.stream().limit(most).map(FaultSwing::inWords).collect(Collectors.joining("; ")) + ".";
    }

    private String inWords() {
        return String.format(Locale.ROOT, "%s %.1f to %.1f", fault.id(), low, high);
    }
}
