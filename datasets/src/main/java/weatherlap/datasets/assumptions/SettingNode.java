package weatherlap.datasets.assumptions;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.datasets.table.CellType;
import weatherlap.datasets.table.Characters;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;

/** What is said of one scalar: its table in {@code scenario.toml}, or its row in a sheet. */
record SettingNode(Scalar scalar, JsonNode node, SettingPlaces places, Problems problems) {
    static final List<String> KEYS = List.of("value", "low", "high", "unit", "basis", "source");

    /** The setting; empty where anything in it is wrong, which is reported. */
    Optional<Setting> read() {
        int before = problems.errorCount();
        if (!node.isObject()) {
            error("", "is not a table; expected: [" + scalar.key() + "] with " + String.join(", ", KEYS));
            return Optional.empty();
        }
        checkNames();
        OptionalDouble value = number("value");
        Optional<ThreePoint> range = value.isPresent() ? range(value.getAsDouble()) : Optional.empty();
        checkUnit();
        Optional<Origin> origin = origin();
        boolean sound = problems.errorCount() == before && value.isPresent() && origin.isPresent();
        return sound ? Optional.of(new Setting(scalar, value.getAsDouble(), range, origin.get())) : Optional.empty();
    }

    private static CellType.Number type(Scalar scalar) {
        return new CellType.Number(scalar.unit(), scalar.low(), false, scalar.high(), false);
    }

    static String expected(Scalar scalar) {
        return type(scalar).expected();
    }

    /** What people typed for a scalar, as {@code scenario.toml} has it. */
    static String plain(Scalar scalar, String typed) {
        return type(scalar).plain(typed);
    }

    /** What is wrong with a number for a scalar; empty: nothing. */
    static String fault(Scalar scalar, String number) {
        String fault = type(scalar).fault(number);
        return fault.isEmpty() && scalar.whole() && Double.parseDouble(number) % 1 != 0
                ? Quoted.of(number) + " is not a whole number (" + type(scalar).expected() + ")"
                : fault;
    }

    private void checkNames() {
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!KEYS.contains(name)) {
                error("", Quoted.of(name) + " is not one of " + String.join(", ", KEYS) + Nearest.hint(name, KEYS));
            }
        }
    }

    private OptionalDouble number(String key) {
        JsonNode number = node.path(key);
        if (number.isNull()) {
            return OptionalDouble.empty(); // what is wrong was said where it was typed
        }
        String fault = number.isNumber()
                ? fault(scalar, number.asText())
                : (number.isMissingNode() ? "is missing (" : "is not a number (") + expected(scalar) + ")";
        if (!fault.isEmpty()) {
            error(key, fault);
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number.doubleValue());
    }

    private Optional<ThreePoint> range(double value) {
        if (!node.has("low") && !node.has("high")) {
            return Optional.empty();
        }
        OptionalDouble low = number("low");
        OptionalDouble high = number("high");
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        if (low.getAsDouble() > high.getAsDouble()) {
            error("low", CsvText.cell(low) + " is above high " + CsvText.cell(high));
            return Optional.empty();
        }
        if (low.getAsDouble() > value || value > high.getAsDouble()) {
            problems.warning(places.at(
                    scalar.key(),
                    "value",
                    CsvText.cell(value) + " is outside low " + CsvText.cell(low) + " and high " + CsvText.cell(high)
                            + ", which count for nothing now; write your own, or leave both out"));
            return Optional.empty();
        }
        return Optional.of(new ThreePoint(low.getAsDouble(), value, high.getAsDouble()));
    }

    private void checkUnit() {
        String unit = node.path("unit").asText(scalar.unit());
        if (!unit.equals(scalar.unit())) {
            error("unit", Quoted.of(unit) + " must be " + Quoted.of(scalar.unit()));
        }
    }

    private Optional<Origin> origin() {
        String word = node.path("basis").asText("");
        String source = node.path("source").asText("");
        if (!Characters.shown(source).equals(source)) {
            error("source", "holds a character that no page can show");
            return Optional.empty();
        }
        if (!Basis.words().contains(word)) {
            error(
                    "basis",
                    Quoted.of(word) + " is not one of " + String.join(", ", Basis.words())
                            + Nearest.hint(word, Basis.words()));
            return Optional.empty();
        }
        Basis basis = Basis.valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_'));
        if (basis.needsSource() && source.isBlank()) {
            error("source", "is empty; the basis " + word + " names its source");
            return Optional.empty();
        }
        return Optional.of(new Origin(ScenarioText.FILE, scalar.key(), basis, source));
    }

    private void error(String part, String message) {
        problems.error(places.at(scalar.key(), part, message));
    }
}
