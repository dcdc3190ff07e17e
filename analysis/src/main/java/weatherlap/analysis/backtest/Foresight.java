package weatherlap.analysis.backtest;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import weatherlap.analysis.callbacks.LevelFit;
import weatherlap.analysis.callbacks.WarrantyRepairs;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobStock;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.random.Normal;

/**
 * What a run with some assumptions foresees of a job. Means are those of {@code compare}; hours and material are lognormal about them, with
 *
 * <pre>
 *  hours     v² = Σ_s (w_s σ_s)² / (Σ_s w_s μ_s)² + c² + o²/n + b²      σ of a step's range, c of a crew, o of a window, n windows
 *  material  v² = Σ_i (n_i σ_i)² / (Σ_i n_i p_i)² + s²                  σ of a price's range, s from job to job
 *  price     one number, or v = s of prices where jobs told
 *  days      ⌈h / (people · hours a day at the house)⌉ of the hours h
 *  calls     Poisson of the expected ones, times a level whose spread the fit gives
 * </pre>
 *
 * <p>where {@code compare} draws each of these causes. Repairs under the warranty stand in the price as
 * {@link WarrantyRepairs} has them.
 *
 * @param crews factor by name; one that is not there is ordinary
 * @param levels of leaks, by method; empty: no calls are judged
 * @param spreads from job to job of material and price, beyond what the tables know
 */
record Foresight(
        Assumptions assumptions, Map<String, Double> crews, Optional<LevelFit> levels, Map<JobAmount, Double> spreads) {

    Foresight {
        crews = Map.copyOf(crews);
        spreads = Map.copyOf(spreads);
    }

    Forecast of(JobBasis basis, JobAmount amount) {
        return switch (amount) {
            case HOURS -> hours(basis);
            case DAYS -> hours(basis).map(this::days);
            case MATERIAL -> Forecast.lognormal(materialUsd(basis.stock()), materialSpread(basis.stock()));
            case PRICE -> Forecast.lognormal(priceUsd(basis), spreads.getOrDefault(JobAmount.PRICE, 0.0));
            case CALLS -> calls(basis);
        };
    }

    private Forecast hours(JobBasis basis) {
        double minutes = 0;
        double squares = 0;
        Map<String, LabourStep> steps = steps();
        for (Map.Entry<LabourStep, Double> entry : basis.work().weights().entrySet()) {
            LabourStep step = steps.get(entry.getKey().id());
            minutes += entry.getValue() * step.minutes().mean();
            squares += entry.getValue() * entry.getValue() * step.minutes().variance();
        }
        Scenario scenario = assumptions.scenario();
        double crew = scenario.value(Scalar.CREW_SPREAD);
        double window = scenario.value(Scalar.OPENING_SPREAD);
        double spread = Math.sqrt(squares / (minutes * minutes)
                + crew * crew
                + window * window / basis.job().openings()
                + basis.work().spread() * basis.work().spread());
        return Forecast.lognormal(Units.minutesToHours(minutes) * crewFactor(basis), spread);
    }

    private Map<String, LabourStep> steps() {
        Map<String, LabourStep> steps = new HashMap<>();
        assumptions.steps().forEach(step -> steps.put(step.id(), step));
        return steps;
    }

    private double crewFactor(JobBasis basis) {
        return basis.job().crew().map(name -> crews.getOrDefault(name, 1.0)).orElse(1.0);
    }

    private double days(double hours) {
        Scenario scenario = assumptions.scenario();
        double atHouse = scenario.value(Scalar.HOURS_PER_DAY)
                - Units.minutesToHours(scenario.value(Scalar.TRAVEL_MINUTES_PER_DAY));
        return Math.max(1, Math.ceil(hours / (scenario.whole(Scalar.CREW_SIZE) * atHouse)));
    }

    double materialUsd(JobStock stock) {
        return stock.usd(assumptions);
    }

    private double materialSpread(JobStock stock) {
        return Math.hypot(
                stock.deviationUsd(assumptions) / materialUsd(stock), spreads.getOrDefault(JobAmount.MATERIAL, 0.0));
    }

    double priceUsd(JobBasis basis) {
        double hours = hours(basis).mean();
        Scenario scenario = assumptions.scenario();
        return Pricing.of(scenario)
                .priceUsd(basis.stock()
                        .cost(scenario, hours, days(hours), materialUsd(basis.stock()), warrantyUsd(basis)));
    }

    double warrantyUsd(JobBasis basis) {
        double level = level(basis).map(LevelFit.Level::mean).orElse(1.0);
        return WarrantyRepairs.usd(basis.damage(), basis.job().openings(), level, assumptions.scenario());
    }

    private Optional<LevelFit.Level> level(JobBasis basis) {
        return levels.map(fit -> fit.level(basis.job().method().ordinal()));
    }

    private Forecast calls(JobBasis basis) {
        FollowedJob followed = basis.followed().orElseThrow();
        LevelFit.Level level = level(basis).orElseThrow();
        double lag = levels.orElseThrow().lagYears().mean();
        double expected = basis.damage().all().reported(followed.years(), lag);
        return Forecast.count(
                expected * level.mean(), (level.high() - level.low()) / (2 * Normal.NINETY_PERCENT) / level.mean());
    }
}
