package weatherlap.sim.assumptions;

import java.util.List;
import java.util.stream.Stream;
import weatherlap.sim.Each;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.method.Method;

/** All that is assumed, row by row in table order. */
public record Assumptions(
        List<LabourStep> steps,
        List<Material> materials,
        List<UnitPrice> unitPrices,
        List<Sightline> sightlines,
        List<LapFault> faults,
        List<Wage> wages,
        Scenario scenario) {
    public Assumptions {
        steps = List.copyOf(steps);
        materials = List.copyOf(materials);
        unitPrices = List.copyOf(unitPrices);
        sightlines = List.copyOf(sightlines);
        faults = List.copyOf(faults);
        wages = List.copyOf(wages);
    }

    public Stream<LabourStep> steps(Method method) {
        return steps.stream().filter(step -> step.method().covers(method));
    }

    public Stream<Material> materials(Method method) {
        return materials.stream().filter(item -> item.method().covers(method));
    }

    public Stream<LapFault> faults(Method method) {
        return faults.stream().filter(fault -> fault.method().covers(method));
    }

    /** @throws IllegalArgumentException when the table has no such row */
    public Sightline sightline(Product product, FrameMaterial material, Operation operation) {
        for (int i = 0; i < sightlines.size(); i++) {
            Sightline row = sightlines.get(i);
            if (row.product() == product && row.material() == material && row.operation() == operation) {
                return row;
            }
        }
        throw new IllegalArgumentException(
                "sightlines.csv has no row for " + product + ", " + material + ", " + operation);
    }

    /** Of the unit that stands. */
    public Sightline existingSightline(Opening opening) {
        return sightline(Product.EXISTING, opening.frame().material(), opening.operation());
    }

    /** Of the unit that a method puts in. */
    public Sightline sightline(Method method, Opening opening) {
        return sightline(Product.of(method), newUnitMaterial(), opening.newOperation());
    }

    /** The material of new units, as the scenario says. */
    public FrameMaterial newUnitMaterial() {
        return scenario.choice(Choice.NEW_UNIT_MATERIAL, FrameMaterial.class);
    }

    /** @throws IllegalArgumentException when the table has no such row */
    public UnitPrice unitPrice(Method method, Operation operation) {
        for (int i = 0; i < unitPrices.size(); i++) {
            UnitPrice row = unitPrices.get(i);
            if (row.method() == method && row.operation() == operation) {
                return row;
            }
        }
        throw new IllegalArgumentException("units.csv has no row for " + method + ", " + operation);
    }

    /** Wages of the house's region, or of the scenario's where the house names none. */
    public List<Wage> wages(House house) {
        String region = scenario.regionOf(house);
        List<Wage> rows = Each.where(wages, row -> row.region().equals(region));
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("wages.csv has no row for the region " + region);
        }
        return rows;
    }

    public Assumptions with(Scenario changed) {
        return new Assumptions(steps, materials, unitPrices, sightlines, faults, wages, changed);
    }

    public Assumptions withSteps(List<LabourStep> changed) {
        return new Assumptions(changed, materials, unitPrices, sightlines, faults, wages, scenario);
    }

    public Assumptions withMaterials(List<Material> changed) {
        return new Assumptions(steps, changed, unitPrices, sightlines, faults, wages, scenario);
    }

    public Assumptions withUnitPrices(List<UnitPrice> changed) {
        return new Assumptions(steps, materials, changed, sightlines, faults, wages, scenario);
    }

    public Assumptions withFaults(List<LapFault> changed) {
        return new Assumptions(steps, materials, unitPrices, sightlines, changed, wages, scenario);
    }

    public Assumptions withWages(List<Wage> changed) {
        return new Assumptions(steps, materials, unitPrices, sightlines, faults, changed, scenario);
    }
}
