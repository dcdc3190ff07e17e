package weatherlap.reports.jobs;

import java.util.List;
import java.util.Map;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.PlanLine;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.offer.ChoiceLine;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.laps.LeakTables;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.SimulatedHouse;

/**
 * What a crew does at each window of a house, as a user says it.
 *
 * @param line {@link #FAMILY} for the family's plan, a {@link ChoiceLine} that a family has kept, or else a {@link PlanLine}
 */
public record CrewPlan(String line) {
    /** The plan that {@code compare} and {@code handout} give the family. */
    public static final String FAMILY = "plan";

    /**
     * The house so done.
     *
     * @param rain of the inputs
     * @throws BadInput where the line does not fit the house
     */
    HouseTakeoff takeoff(Inputs inputs, RainClimate rain, House house) {
        Assumptions assumptions = inputs.assumptions().assumptions();
        List<Method> methods = methods(inputs, rain, house);
        methods.forEach(method -> ClosedMethod.open(List.of(method), house));
        Map<Method, HouseTakeoff> each = HouseTakeoff.of(house, assumptions, rain, LeakTables.of(assumptions));
        return HouseTakeoff.mixed(each, methods);
    }

    private List<Method> methods(Inputs inputs, RainClimate rain, House house) {
        if (line.equals(FAMILY)) {
            return choice(inputs, rain, house).family().byOpening();
        }
        try {
            return ChoiceLine.isOne(line)
                    ? ChoiceLine.parse(line, house, choice(inputs, rain, house).closed())
                    : PlanLine.parse(line, house);
        } catch (IllegalArgumentException e) {
            throw new BadInput(List.of("--method: " + e.getMessage()));
        }
    }

    private static HouseChoice choice(Inputs inputs, RainClimate rain, House house) {
        SimulatedHouse simulated = inputs.simulator(inputs.scenario(), rain).simulateForPlans(house);
        return HouseChoice.of(simulated, inputs.scenario().value(Scalar.RISK_LIMIT));
    }
}
