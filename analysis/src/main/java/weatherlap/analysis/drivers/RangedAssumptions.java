package weatherlap.analysis.drivers;

import java.nio.DoubleBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.many.Recent;
import weatherlap.sim.random.PertQuantile;

/**
 * Assumptions by point of the unit cube: one column a factor, its uniform turned into a value by its beta-PERT quantile. A table none
 * of whose columns moved is the same object as before. Not for several threads at once.
 */
final class RangedAssumptions {
    private final Assumptions base;
    private final List<Factor> factors;
    private final Section<List<LabourStep>> steps;
    private final Section<List<Material>> materials;
    private final Section<List<UnitPrice>> units;
    private final Section<List<LapFault>> faults;
    private final Section<List<Wage>> wages;
    /** Moved by the price list too, which once it is known leaves no spread. */
    private final Section<Scenario> scenario;

    RangedAssumptions(Assumptions base, List<Factor> factors) {
        this.base = base;
        this.factors = factors;
        steps = new Section<>(Set.of("labour-steps"), Assumptions::steps);
        materials = new Section<>(Set.of("materials"), Assumptions::materials);
        units = new Section<>(Set.of("units"), Assumptions::unitPrices);
        faults = new Section<>(Set.of("lap-faults"), Assumptions::faults);
        wages = new Section<>(Set.of("wages"), Assumptions::wages);
        scenario = new Section<>(Set.of("units", "scenario"), Assumptions::scenario);
    }

    /** A part of the assumptions and the tables whose factors move it. */
    private final class Section<T> {
        private final Function<Assumptions, T> part;
        private final int[] columns;
        private final Recent<DoubleBuffer, T> recent = new Recent<>();

        Section(Set<String> tables, Function<Assumptions, T> part) {
            this.part = part;
            columns = IntStream.range(0, factors.size())
                    .filter(f -> tables.contains(factors.get(f).table()))
                    .toArray();
        }

        T at(double[] point) {
            double[] own = Arrays.stream(columns).mapToDouble(f -> point[f]).toArray();
            return recent.at(DoubleBuffer.wrap(own), () -> {
                Draft draft = new Draft(base);
                for (int c = 0; c < columns.length; c++) {
                    Factor factor = factors.get(columns[c]);
                    factor.known().accept(draft, value(factor, own[c]));
                }
                return part.apply(draft.assumptions());
            });
        }
    }

    /** The assumptions with every factor known. */
    Assumptions at(double[] point) {
        return new Assumptions(
                steps.at(point),
                materials.at(point),
                units.at(point),
                base.sightlines(),
                faults.at(point),
                wages.at(point),
                scenario.at(point));
    }

    static double value(Factor factor, double uniform) {
        return PertQuantile.draws(factor.range(), new double[] {uniform})[0];
    }
}
