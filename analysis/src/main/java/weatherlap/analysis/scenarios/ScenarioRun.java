package weatherlap.analysis.scenarios;

import java.util.List;
import java.util.function.ToDoubleFunction;
import weatherlap.analysis.choice.Decision;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Plan;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.MethodResult;

/**
 * The houses under one set of assumptions.
 *
 * @param name of the set
 * @param contrast the two methods set side by side
 */
public record ScenarioRun(String name, Contrast contrast, Decision decision) {
    public List<HouseChoice> choices() {
        return decision.choices();
    }

    /** What the first method costs more than the second, each wherever it can be built, mean of a house by draw, USD. */
    double[] differenceUsd() {
        double[][] byHouse = decision.cases().differenceUsd();
        double[] mean = new double[byHouse[0].length];
        for (double[] house : byHouse) {
            for (int d = 0; d < mean.length; d++) {
                mean[d] += house[d] / byHouse.length;
            }
        }
        return mean;
    }

    /** Mean of a house by a method of the pair, or what stands in its place there. */
    public double mean(Method method, ToDoubleFunction<MethodResult> of) {
        return choices().stream()
                .mapToDouble(choice -> of.applyAsDouble(choice.result().method(own(choice, method))))
                .average()
                .orElseThrow();
    }

    /** Mean of a house's plan with a method as the default. */
    public double meanPlan(Method method, ToDoubleFunction<Plan> of) {
        return choices().stream()
                .mapToDouble(choice -> of.applyAsDouble(choice.wherever().get(own(choice, method))))
                .average()
                .orElseThrow();
    }

    /** The house's own first or second method. */
    private Method own(HouseChoice choice, Method method) {
        Contrast house = choice.result().contrast();
        return method == contrast.first() ? house.first() : house.second();
    }
}
