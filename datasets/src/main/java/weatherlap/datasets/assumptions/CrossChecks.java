package weatherlap.datasets.assumptions;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Product;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Operation;
import weatherlap.sim.labour.WorkingDay;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.price.CrewRate;

/** What no row can know by itself: whether the tables together hold all that a run may ask. */
final class CrossChecks {
    /** Largest share of a price that profit and service may keep together. */
    private static final double MOST_KEPT = 0.95;

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
        checks.everyRegionAskedForIsPaid();
        checks.scenarioHoldsTogether();
    }

    private void everyMethodHasSteps() {
        for (Method method : Method.values()) {
            if (assumptions.steps(method).allMatch(step -> step.method().equals(MethodScope.EVERY))) {
                problems.error(
                        AssumptionSchemas.LABOUR_STEPS.file(),
                        "has no step of its own for the method " + word(method)
                                + "; if your tables come from an earlier version, start again from those that"
                                + " weatherlap assumptions --out writes and copy your rows over");
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

    /** A condition of a region that has no wages holds nowhere: a slip of the pen. */
    private void everyRegionAskedForIsPaid() {
        List<String> regions = regions();
        Stream.concat(
                        assumptions.steps().stream().map(step -> Map.entry(step.origin(), step.appliesWhen())),
                        assumptions.materials().stream().map(item -> Map.entry(item.origin(), item.appliesWhen())))
                .forEach(row -> row.getValue().valuesOf(Fact.REGION).stream()
                        .filter(region -> !regions.contains(region))
                        .forEach(region -> problems.error(
                                row.getKey().table(),
                                0,
                                "applies_when",
                                Quoted.of(region) + " of the row "
                                        + row.getKey().row() + " is not a region of wages.csv"
                                        + Nearest.hint(region, regions))));
    }

    private List<String> regions() {
        return assumptions.wages().stream().map(Wage::region).distinct().toList();
    }

    private void scenarioHoldsTogether() {
        Scenario scenario = assumptions.scenario();
        String region = scenario.choice(Choice.REGION);
        List<String> regions = regions();
        if (!regions.contains(region)) {
            problems.error(
                    ScenarioText.FILE,
                    0,
                    Choice.REGION.key(),
                    Quoted.of(region) + " is not a region of wages.csv" + Nearest.hint(region, regions));
        }
        mayNotFall(scenario, Scalar.REPAIR_COST_LOW_USD, Scalar.REPAIR_COST_USD, Scalar.REPAIR_COST_HIGH_USD);
        mayNotFall(scenario, Scalar.BREAKAGE_FREEZING_FACTOR, Scalar.BREAKAGE_COLD_FACTOR);
        mayNotFall(scenario, Scalar.SOUND_SEAL_PASSES, Scalar.FAILED_SEAL_PASSES);
        leaveOfThePrice(scenario, Scalar.GROSS_MARGIN);
        leaveOfThePrice(scenario, Scalar.NET_PROFIT);
        leaveOfTheDay(scenario);
    }

    /** The way to the house and what is done once a day must leave time for windows. */
    private void leaveOfTheDay(Scenario scenario) {
        double left = WorkingDay.leastLeftMinutes(assumptions);
        if (left < WorkingDay.LEAST_MINUTES) {
            problems.error(
                    ScenarioText.FILE,
                    0,
                    Scalar.HOURS_PER_DAY.key(),
                    String.format(
                            Locale.ROOT,
                            "%s h less %s %s and the steps of labour-steps.csv that each day asks for leave %.0f minutes a day;"
                                    + " at least %.0f are needed",
                            CsvText.cell(scenario.value(Scalar.HOURS_PER_DAY)),
                            Scalar.TRAVEL_MINUTES_PER_DAY.key(),
                            CsvText.cell(scenario.value(Scalar.TRAVEL_MINUTES_PER_DAY)),
                            left,
                            WorkingDay.LEAST_MINUTES));
        }
    }

    private void mayNotFall(Scenario scenario, Scalar... rising) {
        List<String> shown = Arrays.stream(rising)
                .map(scalar -> scalar.key() + " " + CsvText.cell(scenario.value(scalar)))
                .toList();
        for (int i = 1; i < rising.length; i++) {
            if (scenario.value(rising[i - 1]) > scenario.value(rising[i])) {
                problems.error(ScenarioText.FILE, 0, rising[i].key(), String.join(", ", shown) + " must not fall");
                return;
            }
        }
    }

    /** What is kept of a price for profit and for service must leave something to pay the work with. */
    private void leaveOfThePrice(Scenario scenario, Scalar profit) {
        double kept = scenario.value(profit) + scenario.value(Scalar.SERVICE_RESERVE);
        if (kept > MOST_KEPT) {
            problems.error(
                    ScenarioText.FILE,
                    0,
                    profit.key(),
                    CsvText.cell(scenario.value(profit)) + " and " + Scalar.SERVICE_RESERVE.key() + " "
                            + CsvText.cell(scenario.value(Scalar.SERVICE_RESERVE))
                            + " together may take at most " + CsvText.cell(MOST_KEPT) + " of a price");
        }
    }

    private void missing(String file, String... key) {
        problems.error(file, "has no row for " + String.join(", ", Arrays.asList(key)));
    }

    private static String word(Enum<?> constant) {
        return CsvText.cell(constant);
    }
}
