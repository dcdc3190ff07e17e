package weatherlap.datasets.assumptions;

import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Toml;
import weatherlap.sim.assumptions.Choice;

/** Where the settings of a scenario stand in what was read. */
@FunctionalInterface
interface SettingPlaces {
    /**
     * What is wrong with a setting, where it stands.
     *
     * @param name of a scalar or a choice, or one that is neither
     * @param part value, low, high, unit, basis or source; empty: the setting as a whole
     */
    Problem at(String name, String part, String message);

    /** The lines of a {@code scenario.toml}, where a choice is its value. */
    static SettingPlaces in(Toml toml) {
        return (name, part, message) -> new Problem(
                toml.file(),
                toml.line(name),
                Quoted.bare(name),
                part.isEmpty() || Choice.of(name).isPresent() ? message : part + " " + message);
    }
}
