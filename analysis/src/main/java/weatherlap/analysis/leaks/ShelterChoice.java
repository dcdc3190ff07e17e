package weatherlap.analysis.leaks;

import java.util.Locale;
import java.util.function.Function;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.house.House;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.Simulator;

/**
 * A house under the two ways to reckon shelter: a bare wall with its overhang followed hour by hour, or the published wall factor, which
 * holds an average overhang. Never both at once.
 */
public record ShelterChoice(HouseResult hourlyOverhang, HouseResult wallFactor) {
    /** @param simulator of some assumptions; the rest of the run must not depend on them */
    public static ShelterChoice of(Assumptions assumptions, Function<Assumptions, Simulator> simulator, House house) {
        return new ShelterChoice(
                simulator.apply(with(assumptions, "hourly_overhang")).simulate(house),
                simulator.apply(with(assumptions, "wall_factor")).simulate(house));
    }

    private static Assumptions with(Assumptions assumptions, String shelter) {
        return assumptions.with(assumptions.scenario().with(Choice.SHELTER, shelter));
    }

    /** What the published factor makes of the leak score of the house, points: above 0, it holds the house wetter. */
    public double scoreDifference(Method method) {
        return wallFactor.method(method).leakScore().mean()
                - hourlyOverhang.method(method).leakScore().mean();
    }

    /** The difference in one line. */
    public String line() {
        return String.format(
                Locale.ROOT,
                "With the published wall factor in place of the overhang hour by hour, the openings get %.0f rather than %.0f L/m² of"
                        + " driving rain a year, and the leak score of the house is %.1f rather than %.1f with full-flange, %.1f"
                        + " rather than %.1f with an insert.",
                rain(wallFactor),
                rain(hourlyOverhang),
                score(wallFactor, Method.FULL_FLANGE),
                score(hourlyOverhang, Method.FULL_FLANGE),
                score(wallFactor, Method.INSERT),
                score(hourlyOverhang, Method.INSERT));
    }

    private static double rain(HouseResult result) {
        return result.openings().stream()
                .mapToDouble(opening -> opening.exposure().litresPerM2Year())
                .average()
                .orElse(0);
    }

    private static double score(HouseResult result, Method method) {
        return result.method(method).leakScore().mean();
    }
}
