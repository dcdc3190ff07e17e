package weatherlap.sim.labour;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.explain.Amount;

/**
 * What slows or speeds a crew at one house. Each factor is a judgement unless its class names a source.
 *
 * <ul>
 *   <li>cold: {@link ColdCurve}, on cold-sensitive steps;
 *   <li>height: by storey, on height-sensitive steps; for work that a wall shares, the mean over its openings;
 *   <li>learning: the mean of {@link LearningCurve} over the openings of the house, on the steps of an opening. The mean, and not each
 *       opening's own place on the curve, so that an opening's minutes do not depend on the order of the table;
 *   <li>lead-safe: on the steps of an opening where lead-safe work is presumed, but for steps that are there for its sake;
 *   <li>short-handed: a step of more people than the crew has needs help, which is paid for as long as the crew: people ÷ crew.
 * </ul>
 */
public final class Pace {
    private final Scenario scenario;
    private final int openings;
    private final boolean leadSafe;
    private final Amount cold;
    private final Amount learning;
    private final boolean learns;
    private final Amount contained;
    /** By storey, the first at 0. */
    private final List<Amount> heights;

    /**
     * @param openings in the house
     * @param leadSafe whether lead-safe work is presumed
     */
    public Pace(Scenario scenario, int openings, boolean leadSafe) {
        this.scenario = scenario;
        this.openings = openings;
        this.leadSafe = leadSafe;
        cold = cold();
        learning = learning();
        learns = openings > 1 && scenario.value(Scalar.LEARNING_SLOPE) < 1;
        contained = scenario.amount(Scalar.LEAD_SAFE_FACTOR);
        heights = List.of(
                Amount.given("first story", 1, ""),
                scenario.amount(Scalar.HEIGHT_FACTOR_SECOND),
                scenario.amount(Scalar.HEIGHT_FACTOR_THIRD));
    }

    /** Factors of a step at an opening. */
    public List<Amount> atOpening(LabourStep step, int storey) {
        List<Amount> factors = anywhere(step);
        if (step.heightSensitive() && storey > 1) {
            factors.add(height(storey));
        }
        if (learns) {
            factors.add(learning);
        }
        contained(step, factors);
        return factors;
    }

    /** Work in the containment is slower: at an opening, and on the panels or boards around it; not what lead-safe work adds itself. */
    private void contained(LabourStep step, List<Amount> factors) {
        if (leadSafe && !step.appliesWhen().asks(Fact.LEAD_SAFE)) {
            factors.add(contained);
        }
    }

    /** Factors of a step that the openings of a wall share. */
    public List<Amount> atElevation(LabourStep step, List<Integer> storeys) {
        List<Amount> factors = anywhere(step);
        if (step.heightSensitive() && Each.any(storeys, storey -> storey > 1)) {
            List<Amount> heights = Each.of(storeys, this::height);
            double mean = Sum.of(heights, Amount::value) / heights.size();
            factors.add(Amount.formula("mean height factor of the wall's openings", mean, "", heights));
        }
        if (step.driver() != Driver.ELEVATION) {
            contained(step, factors);
        }
        return factors;
    }

    /** Factors of a step of the whole house: also those of a step anywhere. */
    public List<Amount> anywhere(LabourStep step) {
        List<Amount> factors = new ArrayList<>();
        if (step.coldSensitive()) {
            factors.add(cold);
        }
        int crew = scenario.whole(Scalar.CREW_SIZE);
        if (step.people() > crew) {
            factors.add(Amount.formula(
                    "people ÷ crew",
                    (double) step.people() / crew,
                    "",
                    List.of(
                            Amount.given("people", step.people(), "people", step.origin()),
                            scenario.amount(Scalar.CREW_SIZE))));
        }
        return factors;
    }

    private Amount cold() {
        ColdCurve curve = scenario.choice(Choice.COLD_CURVE, ColdCurve.class);
        return Amount.formula(
                "temperature, by " + scenario.choice(Choice.COLD_CURVE),
                curve.factor(scenario.value(Scalar.TEMPERATURE_F)),
                "",
                List.of(scenario.amount(Scalar.TEMPERATURE_F)));
    }

    private Amount height(int storey) {
        return heights.get(Math.min(storey, heights.size()) - 1);
    }

    private Amount learning() {
        double mean = new LearningCurve(scenario.value(Scalar.LEARNING_SLOPE)).mean(openings);
        return Amount.formula(
                "mean of the learning curve over the openings",
                mean,
                "",
                List.of(scenario.amount(Scalar.LEARNING_SLOPE), Amount.given("openings", openings, "openings")));
    }
}
