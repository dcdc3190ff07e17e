package weatherlap.reports.compare;

import java.util.Optional;
import weatherlap.analysis.choice.Decision;
import weatherlap.analysis.season.SeasonStudy;
import weatherlap.analysis.tables.Comparison;
import weatherlap.reports.owner.OwnerFigures;
import weatherlap.reports.season.SeasonSection;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.rain.RainClimate;

/**
 * What is found on a comparison.
 *
 * @param decision the default rule and the choice for each house shown
 * @param season empty where no house has a window
 */
public record Findings(Decision decision, Optional<SeasonStudy> season, OwnerFigures figures) {
    /** Seeks them. */
    public static Findings of(Comparison comparison, Assumptions assumptions, RainClimate climate) {
        Scenario scenario = assumptions.scenario();
        Decision decision = Decision.of(comparison.shown(), scenario, !climate.anyBearing());
        Optional<SeasonStudy> season = SeasonSection.study(decision, scenario, climate);
        return new Findings(decision, season, OwnerFigures.of(comparison, decision, assumptions, season));
    }
}
