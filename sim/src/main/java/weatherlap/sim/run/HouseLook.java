package weatherlap.sim.run;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.LapFault.SeenAs;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Opening;
import weatherlap.sim.laps.HouseLaps;
import weatherlap.sim.laps.LookValue;
import weatherlap.sim.laps.LookValue.ByFinding;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.OpeningResult.LeakCause;

/**
 * What it is worth to open up one window of a house before its method is chosen: the {@link LookValue} of the one existing fault whose
 * sight is worth most.
 *
 * <p>One method leaves the fault f where it stands, the other of the two takes it away (as a rule an insert and full-flange). With H the mean horizon cost of the house, N the
 * openings at which nobody has looked at that lap, p the share of them thought to have the fault, and G what the fault adds to the
 * damage of one opening, the cost of the first at one of them is
 *
 * <pre>
 * sound  = H_leaves / N − p G        faulty = sound + G        G = mean of c_f / p_f · D / Σ P        USD
 * </pre>
 *
 * c_f: what the fault adds to the chance of damage at an opening, p_f: the chance that it stands there; D: expected repairs of the
 * house, whoever pays, ΣP: the sum of the chances of its openings. To first order in the chance of damage; openings are taken to be
 * alike. A look shows more than one lap, so the value is a lower bound (judgement).
 *
 * @param fault whose sight is worth most
 * @param openings at which nobody has looked at that lap
 */
public record HouseLook(LapFault fault, int openings, LookValue value) {

    /**
     * @param leaves the method of the two that leaves faults where they stand
     * @param laps of the house
     */
    static Optional<HouseLook> of(Method leaves, HouseLaps laps, HouseResult result) {
        List<OpeningResult> openings = result.openings().stream()
                .filter(opening -> opening.method() == leaves)
                .toList();
        List<LapFault> faults = laps.tables().assumptions().faults();
        return IntStream.range(0, faults.size())
                .filter(f -> faults.get(f).kind() == FaultKind.EXISTING)
                .mapToObj(f -> of(f, openings, laps, result))
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(look -> look.value().gainUsd()));
    }

    /** @param openings under the method that leaves the fault */
    private static Optional<HouseLook> of(int f, List<OpeningResult> openings, HouseLaps laps, HouseResult result) {
        Scenario scenario = laps.tables().assumptions().scenario();
        LapFault fault = laps.tables().assumptions().faults().get(f);
        List<OpeningResult> unseen = openings.stream()
                .filter(opening -> lookTells(f, opening, laps, result))
                .toList();
        double chances =
                openings.stream().mapToDouble(OpeningResult::leakProbability).sum();
        double share = laps.quality(f).mean();
        if (unseen.isEmpty() || chances == 0 || share == 0) {
            return Optional.empty();
        }
        Method leaves = unseen.get(0).method();
        double usdPerChance = repairsUsd(result.method(leaves)) / chances;
        double added = unseen.stream()
                        .mapToDouble(opening -> addedChance(f, opening, laps))
                        .average()
                        .orElseThrow()
                * usdPerChance;
        double sound = mean(result, leaves) / unseen.size() - share * added;
        double mended = mean(result, result.contrast().other(leaves)) / unseen.size();
        return Optional.of(new HouseLook(
                fault,
                unseen.size(),
                LookValue.of(
                        laps.quality(f),
                        scenario.value(Scalar.INSPECTION_RELIABILITY),
                        unseen.size(),
                        new ByFinding(mended, mended),
                        new ByFinding(sound + added, sound),
                        scenario.value(Scalar.LOOK_COST_USD))));
    }

    private static double repairsUsd(MethodResult method) {
        return method.expectedDamageUsd() + method.warrantyUsd();
    }

    /** Whether nobody has looked, and the fault would stay with the one method and not with the other. */
    private static boolean lookTells(int f, OpeningResult leaving, HouseLaps laps, HouseResult result) {
        Opening opening = leaving.opening();
        return laps.tables()
                        .assumptions()
                        .faults()
                        .get(f)
                        .seenAs()
                        .map(as -> unknown(as, opening))
                        .orElse(false)
                && laps.canStand(f, opening, leaving.method())
                && !laps.canStand(f, opening, result.contrast().other(leaving.method()));
    }

    private static boolean unknown(SeenAs as, Opening opening) {
        return switch (as.joint()) {
            case HEAD -> opening.laps().head() == Lap.UNKNOWN;
            case JAMB -> opening.laps().jamb() == Lap.UNKNOWN;
            case SILL -> opening.laps().sill() == Lap.UNKNOWN;
            case CORNER, FIELD -> false;
        };
    }

    /** What the fault adds to the chance of damage at an opening when it stands there. */
    private static double addedChance(int f, OpeningResult opening, HouseLaps laps) {
        double standing = laps.probability(f, opening.opening());
        String id = laps.tables().assumptions().faults().get(f).id();
        double adds = opening.leakCauses().stream()
                .filter(cause -> cause.faultId().equals(id))
                .mapToDouble(LeakCause::contribution)
                .sum();
        return standing == 0 ? 0 : adds / standing;
    }

    private static double mean(HouseResult result, Method method) {
        return result.method(method).horizonCostUsd().mean();
    }
}
