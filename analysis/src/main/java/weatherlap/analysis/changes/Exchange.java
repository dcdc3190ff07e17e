package weatherlap.analysis.changes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.explain.Origin;

/**
 * Assumptions between two sets: some rows as they were, some as they are.
 *
 * @param before one set
 * @param after the other
 */
public record Exchange(Assumptions before, Assumptions after) {
    private static final String SCENARIO = "scenario.toml";

    /** The rows that are not the same, or stand on one side alone. */
    public SortedSet<RowKey> differing() {
        Map<RowKey, Object> was = values(before);
        Map<RowKey, Object> is = values(after);
        SortedSet<RowKey> differing = new TreeSet<>(was.keySet());
        differing.addAll(is.keySet());
        differing.removeIf(key -> Objects.equals(was.get(key), is.get(key)));
        return differing;
    }

    /** The set before, with those rows as they are after; a row that is not there after is left out. */
    public Assumptions taking(Set<RowKey> rows) {
        return new Assumptions(
                exchanged(before.steps(), after.steps(), LabourStep::origin, rows),
                exchanged(before.materials(), after.materials(), Material::origin, rows),
                exchanged(before.unitPrices(), after.unitPrices(), UnitPrice::origin, rows),
                exchanged(before.sightlines(), after.sightlines(), Sightline::origin, rows),
                exchanged(before.faults(), after.faults(), LapFault::origin, rows),
                exchanged(before.wages(), after.wages(), Wage::origin, rows),
                scenario(rows));
    }

    private Scenario scenario(Set<RowKey> rows) {
        Map<Scalar, Setting> settings = new LinkedHashMap<>(before.scenario().settings());
        settings.replaceAll((scalar, setting) ->
                rows.contains(key(scalar)) ? after.scenario().settings().get(scalar) : setting);
        Map<Choice, String> choices = new LinkedHashMap<>(before.scenario().choices());
        choices.replaceAll(
                (choice, word) -> rows.contains(key(choice)) ? after.scenario().choice(choice) : word);
        return new Scenario(settings, choices);
    }

    private static Map<RowKey, Object> values(Assumptions assumptions) {
        Map<RowKey, Object> values = new TreeMap<>();
        assumptions.steps().forEach(row -> values.put(RowKey.of(row.origin()), row));
        assumptions.materials().forEach(row -> values.put(RowKey.of(row.origin()), row));
        assumptions.unitPrices().forEach(row -> values.put(RowKey.of(row.origin()), row));
        assumptions.sightlines().forEach(row -> values.put(RowKey.of(row.origin()), row));
        assumptions.faults().forEach(row -> values.put(RowKey.of(row.origin()), row));
        assumptions.wages().forEach(row -> values.put(RowKey.of(row.origin()), row));
        assumptions.scenario().settings().forEach((scalar, setting) -> values.put(key(scalar), setting));
        assumptions.scenario().choices().forEach((choice, word) -> values.put(key(choice), word));
        return values;
    }

    private static RowKey key(Scalar scalar) {
        return new RowKey(SCENARIO, scalar.key());
    }

    private static RowKey key(Choice choice) {
        return new RowKey(SCENARIO, "choices/" + choice.key());
    }

    /** Rows that both have keep their place; new ones come last, in their order. */
    private static <T> List<T> exchanged(List<T> was, List<T> is, Function<T, Origin> origin, Set<RowKey> taken) {
        Map<RowKey, T> after = new LinkedHashMap<>();
        is.forEach(row -> after.put(RowKey.of(origin.apply(row)), row));
        List<T> rows = new ArrayList<>();
        for (T row : was) {
            RowKey key = RowKey.of(origin.apply(row));
            T other = after.remove(key);
            if (!taken.contains(key)) {
                rows.add(row);
            } else if (other != null) {
                rows.add(other);
            }
        }
        after.forEach((key, row) -> {
            if (taken.contains(key)) {
                rows.add(row);
            }
        });
        return rows;
    }
}
