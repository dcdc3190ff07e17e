package weatherlap.analysis.calibration;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.datasets.jobs.JobMaker;
import weatherlap.datasets.jobs.Shop;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;

/**
 * How often the intervals of a calibration hold the true rates, over shops drawn from the tables' ranges and the pace of the options,
 * each with job records of its own.
 *
 * @param shops one for each seed
 * @param insideByStep share of the shops whose true rate lay in its interval, by step id in table order
 * @param insideByShop share of the rates of each shop that lay in theirs
 */
record CoverageStudy(int shops, Map<String, Double> insideByStep, List<Double> insideByShop) {
    CoverageStudy {
        insideByStep = Collections.unmodifiableMap(new LinkedHashMap<>(insideByStep));
        insideByShop = List.copyOf(insideByShop);
    }

    /**
     * Draws shops with seeds 1, 2, … and calibrates each.
     *
     * @param jobs records of each shop
     * @param timedShare share of them in which the steps were timed
     */
    static CoverageStudy of(Assumptions tables, CalibrationOptions options, int shops, int jobs, double timedShare) {
        double jobSpread = tables.scenario().value(Scalar.CREW_SPREAD);
        Map<String, Double> byStep = new LinkedHashMap<>();
        List<Double> byShop = new ArrayList<>();
        for (long seed = 1; seed <= shops; seed++) {
            Shop shop = Shop.drawn(tables, options.paceSpread(), seed);
            JobMaker maker = new JobMaker(tables, shop, jobSpread, timedShare, seed);
            List<StepFit> fits = Calibrator.calibrate(tables, maker.jobs(jobs), options.withoutHeldOut())
                    .steps();
            int inside = 0;
            for (StepFit fit : fits) {
                boolean holds = fit.holds(shop.minutes().get(fit.step().id()));
                byStep.merge(fit.step().id(), holds ? 1.0 / shops : 0, Double::sum);
                inside += holds ? 1 : 0;
            }
            byShop.add((double) inside / fits.size());
        }
        return new CoverageStudy(shops, byStep, byShop);
    }

    /** Share of all rates of all shops that lay in their intervals. */
    double inside() {
        return insideByShop.stream().mapToDouble(share -> share).average().orElseThrow();
    }

    /** Standard error of {@link #inside()}, from shop to shop. */
    double standardError() {
        double mean = inside();
        double squares =
                insideByShop.stream().mapToDouble(s -> Math.pow(s - mean, 2)).sum();
        return Math.sqrt(squares / (shops - 1) / shops);
    }
}
