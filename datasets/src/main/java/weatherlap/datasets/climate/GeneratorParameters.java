package weatherlap.datasets.climate;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.TextTable;

/** The numbers of an invented climate, as {@code climate-generator.csv} gives and explains them. */
public record GeneratorParameters(Map<Parameter, Double> values) {
    /** What each means stands in the table. */
    public enum Parameter {
        FIRST_YEAR,
        YEARS,
        EVENTS_PER_YEAR,
        EVENT_SEASON,
        SHOWER_SHARE,
        STORM_HOURS,
        STORM_HOURS_SHAPE,
        STORM_RAIN_MM,
        SHOWER_HOURS,
        SHOWER_RAIN_MM,
        EVENT_RAIN_SHAPE,
        YEAR_SPREAD,
        BURST_SPREAD,
        BREAK_SHARE,
        WIND_M_S,
        WIND_SEASON,
        WIND_SPREAD,
        WIND_MEMORY,
        STORM_WIND_GAIN,
        STORM_WIND_SPREAD,
        CALM_M_S,
        STORM_START_FROM_DEG,
        STORM_END_FROM_DEG,
        STORM_FROM_SPREAD_DEG,
        SHOWER_FROM_DEG,
        SHOWER_FROM_SPREAD_DEG,
        FAIR_WINTER_FROM_DEG,
        FAIR_SUMMER_FROM_DEG,
        FAIR_FROM_SPREAD_DEG,
        FAIR_FROM_MEMORY,
        TURN_MEMORY,
        TEMPERATURE_C,
        TEMPERATURE_SEASON_C,
        TEMPERATURE_DAY_C,
        TEMPERATURE_SPREAD_C,
        TEMPERATURE_MEMORY;

        String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The table. */
    public static final Schema SCHEMA = new Schema(
            "climate-generator.csv",
            "what the weather of an invented town is made from",
            List.of(
                    Column.word("name", Parameter.class, "which number"),
                    Column.number("value", "", -1e4, 1e4, "its value"),
                    Column.text("unit", "its unit").optional(),
                    Column.word("basis", List.of("invented"), "nothing here was measured"),
                    Column.text("meaning", "what it does")),
            List.of("name"));

    public GeneratorParameters {
        for (Parameter parameter : Parameter.values()) {
            if (!values.containsKey(parameter)) {
                throw new IllegalArgumentException("The climate generator must be given " + parameter.key() + ".");
            }
        }
        values = Map.copyOf(values);
    }

    double value(Parameter parameter) {
        return values.get(parameter);
    }

    /** The same with one number changed. */
    GeneratorParameters with(Parameter parameter, double value) {
        Map<Parameter, Double> changed = new EnumMap<>(values);
        changed.put(parameter, value);
        return new GeneratorParameters(changed);
    }

    /** Reads the table of a folder. */
    static Loaded<GeneratorParameters> read(Folder folder) {
        Problems problems = new Problems();
        Optional<TextTable> table = folder.table(SCHEMA, problems);
        Map<Parameter, Double> values = new EnumMap<>(Parameter.class);
        table.ifPresent(t -> t.soundRows().forEach(row -> values.put(name(row), row.number("value"))));
        for (Parameter parameter : Parameter.values()) {
            if (table.isPresent() && !values.containsKey(parameter)) {
                problems.error(SCHEMA.file(), "has no row " + parameter.key());
            }
        }
        return Loaded.of(
                problems.hasErrors() ? Optional.empty() : Optional.of(new GeneratorParameters(values)), problems);
    }

    private static Parameter name(Row row) {
        return row.word("name", Parameter.class);
    }

    /** The bundled table. */
    static GeneratorParameters bundled() {
        return read(Folder.beside(GeneratorParameters.class, "/weatherlap/datasets"))
                .orElseThrow();
    }
}
