package weatherlap.sim.laps;

import java.util.Optional;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Cladding;

/**
 * What stands in front of a lap, and how it ages. A seal lets {@code soundPasses} of the arriving water by while it is sound and
 * {@code failedPasses} once it has failed; it stays failed until it is renewed. A line without a life passes the same share for ever. Flashing laps themselves
 * do not age here.
 *
 * <p>Years are counted 1, 2, … after the work; the state of a seal in a year is its state in the middle of that year.
 *
 * @param soundPasses share of the arriving water that passes while the line is sound, 0 to 1
 * @param failedPasses share that passes once it has failed, from {@code soundPasses} to 1
 * @param life of the seal; empty: it does not age
 * @param renewYears the seal is renewed every so many years; 0: never
 */
record LineOfDefence(double soundPasses, double failedPasses, Optional<WeibullLife> life, int renewYears) {
    public LineOfDefence {
        Check.fraction("share past a sound line", soundPasses);
        Check.within("share past a failed line", failedPasses, soundPasses, 1);
        Check.within("years between renewals", renewYears, 0, 1000);
    }

    public static LineOfDefence of(FirstLine line, Cladding wall, Scenario scenario) {
        double sound = scenario.value(Scalar.SOUND_SEAL_PASSES);
        double failed = scenario.value(Scalar.FAILED_SEAL_PASSES);
        double cladding = scenario.value(passing(wall));
        int renew = scenario.whole(Scalar.RESEAL_YEARS);
        return switch (line) {
            case SEALANT ->
                new LineOfDefence(
                        sound, failed, life(scenario, Scalar.SEALANT_LIFE_SHAPE, Scalar.SEALANT_LIFE_YEARS), renew);
            case CAPPING ->
                new LineOfDefence(
                        sound, failed, life(scenario, Scalar.CAPPING_LIFE_SHAPE, Scalar.CAPPING_LIFE_YEARS), renew);
            case CLADDING -> new LineOfDefence(cladding, cladding, Optional.empty(), 0);
            case NONE -> new LineOfDefence(1, 1, Optional.empty(), 0);
        };
    }

    /** The scalar that holds the share of the arriving water that a cladding lets by. */
    static Scalar passing(Cladding cladding) {
        return switch (cladding) {
            case VINYL_SIDING, ALUMINUM_SIDING -> Scalar.CLADDING_PASSES;
            case WOOD_LAP, FIBER_CEMENT -> Scalar.BOARDS_PASS;
            case BRICK_VENEER -> Scalar.BRICK_PASSES;
            case STUCCO -> Scalar.STUCCO_PASSES;
        };
    }

    private static Optional<WeibullLife> life(Scenario scenario, Scalar shape, Scalar years) {
        return Optional.of(new WeibullLife(scenario.value(shape), scenario.value(years)));
    }

    /** Age of the seal in the middle of a year after the work, years. */
    private double age(int year) {
        return (renewYears == 0 ? year : (year - 1) % renewYears + 1) - 0.5;
    }

    /** Whether the seal is renewed as a year begins. */
    boolean renewedBefore(int year) {
        return renewYears > 0 && year > 1 && (year - 1) % renewYears == 0;
    }

    /** Chance that the seal, sound in the year before (or new), has failed by the middle of this one. */
    double failsIn(int year) {
        return life.map(l -> l.failsBetween(age(year) - 1, age(year))).orElse(0.0);
    }

    /** Mean share of the arriving water that passes in a year, 0 to 1. */
    public double passes(int year) {
        double failed = life.map(l -> l.failedBy(age(year))).orElse(0.0);
        return soundPasses + (failedPasses - soundPasses) * failed;
    }

    /** Mean share that passes over the first {@code years} years. */
    public double meanPasses(int years) {
        double total = 0;
        for (int year = 1; year <= years; year++) {
            total += passes(year);
        }
        return total / years;
    }
}
