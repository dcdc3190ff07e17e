package weatherlap.analysis.tables;

import java.io.Serializable;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.ElevationResult;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.OpeningResult;

/**
 * Some openings of a portfolio under both methods, summed up from their elevations so that a house counts in the part of it that is
 * meant.
 *
 * @param label what the openings have in common
 * @param contrast the two methods; at a house that one of them has no way to, another stands in its place
 * @param houses houses with at least one of them
 * @param openings how many there are
 * @param housesForFirst houses among them whose lower expected horizon cost is that of the first of the two methods
 */
public record Share(
        String label, Contrast contrast, int houses, int openings, int housesForFirst, Map<Method, Totals> methods) {
    public Share {
        methods = Map.copyOf(methods);
    }

    /**
     * Sums over the openings, means of the draws.
     *
     * @param glassExistingFt2 visible glass today, ft²
     * @param glassFt2 visible glass after the work, ft²
     * @param labourMinutes person-minutes at the openings and on the walls, without what a whole house shares
     * @param leakScores sum of the openings' chances of leak damage within the horizon, percent
     * @param drivingRain sum of the openings' driving rain, L/m² a year
     * @param horizonCostUsd the elevations' shares of their houses' horizon cost, USD
     */
    public record Totals(
            double glassExistingFt2,
            double glassFt2,
            double labourMinutes,
            double leakScores,
            double drivingRain,
            double horizonCostUsd)
            implements Serializable {
        static final Totals NONE = new Totals(0, 0, 0, 0, 0, 0);

        /** Glass lost as a share of today's, percent. */
        public double glassLostPct() {
            return glassExistingFt2 == 0 ? 0 : 100 * (glassExistingFt2 - glassFt2) / glassExistingFt2;
        }

        private Totals plus(Totals other) {
            return new Totals(
                    glassExistingFt2 + other.glassExistingFt2,
                    glassFt2 + other.glassFt2,
                    labourMinutes + other.labourMinutes,
                    leakScores + other.leakScores,
                    drivingRain + other.drivingRain,
                    horizonCostUsd + other.horizonCostUsd);
        }

        /** @param openings of the wall */
        private Totals plus(ElevationResult wall, List<OpeningResult> openings) {
            double existingFt2 = glassExistingFt2;
            double afterFt2 = glassFt2;
            double scores = leakScores;
            double rain = drivingRain;
            for (int o = 0; o < openings.size(); o++) {
                OpeningResult opening = openings.get(o);
                existingFt2 += opening.glassExistingFt2();
                afterFt2 += opening.glassFt2();
                scores += opening.leakScore().mean();
                rain += opening.exposure().litresPerM2Year();
            }
            return new Totals(
                    existingFt2,
                    afterFt2,
                    labourMinutes + wall.labourMinutesMean(),
                    scores,
                    rain,
                    horizonCostUsd + wall.horizonCostUsdMean());
        }
    }

    public Totals of(Method method) {
        return methods.get(method);
    }

    /** First less second, mean horizon cost of one opening, USD. */
    public double differencePerOpeningUsd() {
        return (of(contrast.first()).horizonCostUsd() - of(contrast.second()).horizonCostUsd()) / openings;
    }

    /** Adds up while a portfolio is walked through. */
    static final class Sum implements Serializable {
        private final Map<Method, Totals> methods = new EnumMap<>(Method.class);
        private int houses;
        private Contrast contrast = Contrast.USUAL;
        private int forFirst;
        private int openings;
        private String lastHouse = "";

        /**
         * Takes in a wall under one method of the contrast there.
         *
         * @param there the contrast of the house
         * @param its openings under that method
         */
        void add(HouseResult house, Contrast there, ElevationResult wall, List<OpeningResult> its) {
            if (!house.house().id().equals(lastHouse)) {
                lastHouse = house.house().id();
                houses++;
                contrast = house.named();
                forFirst += house.preferred() == there.first() ? 1 : 0;
            }
            Method named = contrast.named(wall.method(), there);
            if (named == contrast.first()) {
                openings += wall.elevation().openings().size();
            }
            methods.put(named, methods.getOrDefault(named, Totals.NONE).plus(wall, its));
        }

        /** Takes in other houses, which come after these. */
        void add(Sum other) {
            if (other.houses > 0) {
                contrast = other.contrast;
                lastHouse = other.lastHouse;
            }
            houses += other.houses;
            openings += other.openings;
            forFirst += other.forFirst;
            other.methods.forEach((method, totals) -> methods.merge(method, totals, Totals::plus));
        }

        Share share(String label) {
            return new Share(label, contrast, houses, openings, forFirst, methods);
        }
    }
}
