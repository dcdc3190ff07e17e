package weatherlap.datasets.assumptions;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Product;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Operation;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.CrewRate;

/** What no row can know by itself: whether the tables together hold all that a run may ask. */
final class CrossChecks {
    private final Assumptions assumptions;
    private final Problems problems;

    private CrossChecks(Assumptions assumptions, Problems problems) {
        this.assumptions = assumptions;
        this.problems = problems;
    }

    static void check(Assumptions assumptions, Problems problems) {
        CrossChecks checks = new CrossChecks(assumptions, problems);
        checks.everyMethodHasSteps();
        checks.everyUnitHasItsPrice();
        checks.everyUnitHasItsSightlines();
        checks.everyRegionPaysTheCrew();
        checks.scenarioHoldsTogether();
    }

    private void everyMethodHasSteps() {
        for (Method method : Method.values()) {
            if (assumptions.steps(method).findAny().isEmpty()) {
                problems.error(AssumptionSchemas.LABOUR_STEPS.file(), "has no step for the method " + word(method));
            }
        }
    }

    private void everyUnitHasItsPrice() {
        Set<List<?>> priced = new HashSet<>();
        for (UnitPrice price : assumptions.unitPrices()) {
            priced.add(List.of(price.method(), price.operation()));
        }
        for (Method method : Method.values()) {
            for (Operation operation : Operation.values()) {
                if (!priced.contains(List.of(method, operation))) {
                    missing(AssumptionSchemas.UNITS.file(), word(method), word(operation));
                }
            }
        }
    }

    private void everyUnitHasItsSightlines() {
        Set<List<?>> known = new HashSet<>();
        for (Sightline row : assumptions.sightlines()) {
            known.add(List.of(row.product(), row.material(), row.operation()));
        }
        for (Product product : Product.values()) {
            for (FrameMaterial material : FrameMaterial.values()) {
                for (Operation operation : Operation.values()) {
                    if (!known.contains(List.of(product, material, operation))) {
                        missing(AssumptionSchemas.SIGHTLINES.file(), word(product), word(material), word(operation));
                    }
                }
            }
        }
    }

    private void everyRegionPaysTheCrew() {
        Map<String, Set<String>> roles = new LinkedHashMap<>();
        for (Wage wage : assumptions.wages()) {
            roles.computeIfAbsent(wage.region(), none -> new HashSet<>()).add(wage.role());
        }
        List<String> needed = CrewRate.roles(assumptions.scenario().whole(Scalar.CREW_SIZE));
        roles.forEach((region, paid) -> needed.stream()
                .filter(role -> !paid.contains(role))
                .forEach(role -> missing(AssumptionSchemas.WAGES.file(), Quoted.of(region), role)));
    }

    private void scenarioHoldsTogether() {
        Scenario scenario = assumptions.scenario();
        String region = scenario.choice(Choice.REGION);
        List<String> regions = new ArrayList<>(
                assumptions.wages().stream().map(Wage::region).distinct().toList());
        if (!regions.contains(region)) {
            problems.error(
                    ScenarioText.FILE,
                    0,
                    Choice.REGION.key(),
                    Quoted.of(region) + " is not a region of wages.csv" + Nearest.hint(region, regions));
        }
        double low = scenario.value(Scalar.REPAIR_COST_LOW_USD);
        double likely = scenario.value(Scalar.REPAIR_COST_USD);
        double high = scenario.value(Scalar.REPAIR_COST_HIGH_USD);
        if (low > likely || likely > high) {
            problems.error(
                    ScenarioText.FILE,
                    0,
                    Scalar.REPAIR_COST_USD.key(),
                    "low " + CsvText.cell(low) + ", likely " + CsvText.cell(likely) + ", high " + CsvText.cell(high)
                            + " must not fall");
        }
    }

    private void missing(String file, String... key) {
        problems.error(file, "has no row for " + String.join(", ", Arrays.asList(key)));
    }

    private static String word(Enum<?> constant) {
        return CsvText.cell(constant);
    }
}
