package weatherlap.sim.run;

import java.util.List;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.OpeningExposure;

/**
 * One opening under one method.
 *
 * @param elevation the wall it stands in
 * @param glassExistingFt2 visible glass today, ft²
 * @param glassFt2 visible glass after the work, ft²
 * @param clearWidthIn net clear opening, in.
 * @param clearAreaFt2 likewise, ft²
 * @param codeFlags short codes of what a building official would look at
 * @param orderWidthIn size to order, in.
 * @param labourMinutes person-minutes at this opening, without what openings share
 * @param materialUsd unit and consumables used at this opening, USD, without what openings share and the rest of opened packages
 * @param priceUsd share of the house's price, by labour and material at the opening; the shares sum to it
 * @param waterPastFirstLineLitresPerYear mean over the horizon, L a year
 * @param leakScore chance of leak damage within the horizon, in percent: mean, and band over the causes that are not known
 * @param leakCauses contributions to {@link #leakProbability()}, largest first; they sum to it
 */
public record OpeningResult(
        Elevation elevation,
        Opening opening,
        Method method,
        double glassExistingFt2,
        double glassFt2,
        double clearWidthIn,
        double clearHeightIn,
        double clearAreaFt2,
        List<String> codeFlags,
        double orderWidthIn,
        double orderHeightIn,
        Summary labourMinutes,
        Summary materialUsd,
        double priceUsd,
        OpeningExposure exposure,
        double waterPastFirstLineLitresPerYear,
        Summary leakScore,
        List<LeakCause> leakCauses) {
    public OpeningResult {
        codeFlags = List.copyOf(codeFlags);
        leakCauses = List.copyOf(leakCauses);
    }

    /**
     * What one lap fault adds to the chance of leak damage.
     *
     * @param contribution part of the probability, 0 to 1
     */
    public record LeakCause(String faultId, String tradeName, double contribution) {}

    public double glassLostFt2() {
        return glassExistingFt2 - glassFt2;
    }

    /** Glass lost as a fraction of the existing. */
    public double glassLostFraction() {
        return glassLostFt2() / glassExistingFt2;
    }

    /** Chance of leak damage within the horizon, 0 to 1. */
    public double leakProbability() {
        return leakScore.mean() / 100;
    }
}
