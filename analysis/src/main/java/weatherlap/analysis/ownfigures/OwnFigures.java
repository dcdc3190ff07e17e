package weatherlap.analysis.ownfigures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.EarlierSource;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.House;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.work.WorkTakeoff;

/**
 * The one thing that an owner without records knows: how many windows a day the crew does. With r windows a day of a job of n windows
 * ({@link WorkTakeoff#openingsADay}), w minutes weights of the job and its walls and windows, d of a day,
 *
 * <pre>Σ_s (r w_s + n d_s) m_s = n C T     C people, T minutes a day at the house</pre>
 *
 * <p>is one line that the minutes m of the steps must meet. They move to it as {@link BoundedShift} says: most where a step is least sure
 * and weighs most, none out of its range. Steps that the job does not have stay as they are.
 */
public final class OwnFigures {
    private static final String OWN = "own figure: ";

    private final Assumptions assumptions;
    private final House house;

    public OwnFigures(Assumptions assumptions, House house) {
        this.assumptions = assumptions;
        this.house = house;
    }

    /**
     * Steps moved so that a job comes out at the figures.
     *
     * @param steps all, in table order
     * @param moved those whose minutes changed, with the change as a fraction, in table order
     */
    public record Tuned(List<LabourStep> steps, Map<LabourStep, Double> moved) {
        public Tuned {
            steps = List.copyOf(steps);
            moved = Collections.unmodifiableMap(moved);
        }
    }

    /** Windows a day that the tables give, and those at either end of every step's range. */
    public record Reach(double low, double now, double high) {}

    /** How far the ranges of the steps reach for a method. */
    public Reach reach(Method method) {
        return new Reach(
                rate(method, step -> step.minutes().high()),
                work(method).openingsADay(minutesADay()),
                rate(method, step -> step.minutes().low()));
    }

    /**
     * Moves the steps.
     *
     * @param aDay windows a day by method, each above 0
     * @param words what the figures rest on, for the rows that move
     * @throws IllegalArgumentException where no minutes within the ranges meet the figures, each or all together
     */
    public Tuned tuned(Map<Method, Double> aDay, String words) {
        Map<Method, Double> figures = new EnumMap<>(aDay);
        figures.values().forEach(rate -> Check.positive("windows a day", rate));
        List<LabourStep> steps = assumptions.steps();
        double[] target = new double[figures.size()];
        double[][] weights = new double[figures.size()][];
        int k = 0;
        for (Map.Entry<Method, Double> figure : figures.entrySet()) {
            target[k] = house.openingCount() * crewMinutesADay();
            weights[k++] = weights(work(figure.getKey()), figure.getValue());
        }
        double[] minutes = BoundedShift.of(
                        steps.stream().map(LabourStep::minutes).toList(), weights, target)
                .orElseThrow(() -> new IllegalArgumentException("no minutes within the ranges of the steps give "
                        + figures.entrySet().stream()
                                .map(f -> f.getKey().word() + "=" + String.format(Locale.ROOT, "%s", f.getValue()))
                                .collect(Collectors.joining(" and "))));
        return tuned(minutes, words);
    }

    private Tuned tuned(double[] minutes, String words) {
        List<LabourStep> steps = new ArrayList<>();
        Map<LabourStep, Double> moved = new LinkedHashMap<>();
        for (int s = 0; s < minutes.length; s++) {
            LabourStep step = assumptions.steps().get(s);
            double before = step.minutes().mean();
            double change = before == 0 ? 0 : minutes[s] / before - 1;
            if (Math.abs(change) < 1e-6) {
                steps.add(step);
                continue;
            }
            LabourStep now = new LabourStep(
                    step.id(),
                    step.method(),
                    step.tradeName(),
                    step.driver(),
                    step.minutes().times(1 + change),
                    step.appliesWhen(),
                    step.coldSensitive(),
                    step.heightSensitive(),
                    step.people(),
                    new Origin(
                            step.origin().table(),
                            step.origin().row(),
                            Basis.OWN_FIGURE,
                            OWN + words + EarlierSource.ofFirst(step.origin().source(), OWN)));
            steps.add(now);
            moved.put(now, change);
        }
        return new Tuned(steps, moved);
    }

    /** For each minute of a step, what the left side of the line grows by. */
    private double[] weights(WorkTakeoff work, double rate) {
        double[] weights = new double[assumptions.steps().size()];
        int days = work.crewDays().days();
        for (LabourLine line : work.lines()) {
            int step = assumptions.steps().indexOf(line.step());
            boolean daily = work.dayLines().contains(line);
            weights[step] += daily ? house.openingCount() * line.weight() / days : rate * line.weight();
        }
        return weights;
    }

    private double rate(Method method, ToDoubleFunction<LabourStep> minutes) {
        double daily = 0;
        double others = 0;
        WorkTakeoff work = work(method);
        for (LabourLine line : work.lines()) {
            double taken = line.weight() * minutes.applyAsDouble(line.step());
            if (work.dayLines().contains(line)) {
                daily += taken / work.crewDays().days();
            } else {
                others += taken;
            }
        }
        return house.openingCount() * (crewMinutesADay() - daily) / others;
    }

    private WorkTakeoff work(Method method) {
        return HouseTakeoff.work(house, method, assumptions);
    }

    /** Of a working day, less the way to the house. */
    private double minutesADay() {
        return 60 * assumptions.scenario().value(Scalar.HOURS_PER_DAY)
                - assumptions.scenario().value(Scalar.TRAVEL_MINUTES_PER_DAY);
    }

    private double crewMinutesADay() {
        return assumptions.scenario().whole(Scalar.CREW_SIZE) * minutesADay();
    }
}
