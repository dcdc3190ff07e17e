package weatherlap.analysis.drivers;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.assumptions.Wage;

/** Assumptions in which many numbers are changed before they are assumptions again. */
final class Draft {
    private final Assumptions base;
    private final List<LabourStep> steps;
    private final List<Material> materials;
    private final List<UnitPrice> unitPrices;
    private final List<LapFault> faults;
    private final List<Wage> wages;
    private final Map<Scalar, Setting> settings;
    private final Map<Choice, String> choices;

    Draft(Assumptions base) {
        this.base = base;
        steps = new ArrayList<>(base.steps());
        materials = new ArrayList<>(base.materials());
        unitPrices = new ArrayList<>(base.unitPrices());
        faults = new ArrayList<>(base.faults());
        wages = new ArrayList<>(base.wages());
        settings = new EnumMap<>(base.scenario().settings());
        choices = new EnumMap<>(base.scenario().choices());
    }

    void steps(Predicate<LabourStep> which, UnaryOperator<LabourStep> change) {
        replace(steps, which, change);
    }

    void materials(Predicate<Material> which, UnaryOperator<Material> change) {
        replace(materials, which, change);
    }

    void unitPrices(Predicate<UnitPrice> which, UnaryOperator<UnitPrice> change) {
        replace(unitPrices, which, change);
    }

    void faults(Predicate<LapFault> which, UnaryOperator<LapFault> change) {
        replace(faults, which, change);
    }

    void wages(Predicate<Wage> which, UnaryOperator<Wage> change) {
        replace(wages, which, change);
    }

    void scalar(Scalar scalar, double value) {
        settings.put(scalar, settings.get(scalar).with(value));
    }

    void choice(Choice choice, String word) {
        choices.put(choice, word);
    }

    Scenario scenario() {
        return new Scenario(settings, choices);
    }

    Assumptions assumptions() {
        return new Assumptions(steps, materials, unitPrices, base.sightlines(), faults, wages, scenario());
    }

    private static <T> void replace(List<T> rows, Predicate<T> which, UnaryOperator<T> change) {
        for (int i = 0; i < rows.size(); i++) {
            if (which.test(rows.get(i))) {
                rows.set(i, change.apply(rows.get(i)));
            }
        }
    }
}
