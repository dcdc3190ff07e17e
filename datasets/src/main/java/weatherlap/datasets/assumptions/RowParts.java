package weatherlap.datasets.assumptions;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.sim.assumptions.Condition;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;

/** Reads what rows of several assumption tables have in common; empty where it does not hold together, which is reported. */
record RowParts(Problems problems) {
    Optional<Origin> origin(Row row, String key) {
        String word = row.text("basis");
        if (!Basis.words().contains(word)) {
            return Optional.of(new Origin(row.file(), key, Basis.OWN_FIGURE, own(word, row.text("source"))));
        }
        Basis basis = row.word("basis", Basis.class);
        if (basis.needsSource() && !row.has("source")) {
            row.error(problems, "source", "is empty; the basis " + row.text("basis") + " names its source");
            return Optional.empty();
        }
        return Optional.of(new Origin(row.file(), key, basis, row.text("source")));
    }

    /** A basis in words of one's own is what a figure of the shop rests on. */
    static String own(String basis, String source) {
        return source.isEmpty() ? basis : basis + "; " + source;
    }

    /** Three numbers that must not fall. */
    Optional<ThreePoint> points(Row row, String low, String likely, String high) {
        double a = row.number(low);
        double m = row.number(likely);
        double b = row.number(high);
        if (a <= m && m <= b) {
            return Optional.of(new ThreePoint(a, m, b));
        }
        row.error(
                problems,
                a > m ? low : high,
                low + " " + row.text(low) + ", " + likely + " " + row.text(likely) + ", " + high + " " + row.text(high)
                        + " must not fall");
        return Optional.empty();
    }

    /** A condition that asks only what is known where the driver is counted. */
    Optional<Condition> condition(Row row, Driver driver) {
        return condition(row, Fact.ofRows()).filter(condition -> {
            List<Fact> unknown = condition.facts().stream()
                    .filter(fact -> fact.level().compareTo(driver.level()) > 0)
                    .sorted()
                    .toList();
            unknown.stream()
                    .limit(1)
                    .forEach(fact -> row.error(
                            problems,
                            "applies_when",
                            fact.key() + " is known only for each "
                                    + fact.level().name().toLowerCase(Locale.ROOT) + ", but the driver "
                                    + row.text("driver") + " is counted for each "
                                    + driver.level().name().toLowerCase(Locale.ROOT)));
            return unknown.isEmpty();
        });
    }

    /** A condition over some facts. */
    Optional<Condition> condition(Row row, List<Fact> askable) {
        try {
            return Optional.of(Condition.parse(row.text("applies_when"), askable));
        } catch (IllegalArgumentException e) {
            row.error(problems, "applies_when", e.getMessage());
            return Optional.empty();
        }
    }
}
