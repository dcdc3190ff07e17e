package weatherlap.sim.assumptions;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Contrast;

/** Every scalar and every choice of a run. */
public record Scenario(Map<Scalar, Setting> settings, Map<Choice, String> choices) {
    public Scenario {
        for (Scalar scalar : Scalar.values()) {
            if (!settings.containsKey(scalar)) {
                throw new IllegalArgumentException("The scenario must give " + scalar.key() + ".");
            }
        }
        for (Choice choice : Choice.values()) {
            String word = choices.get(choice);
            if (word == null || !(choice.allowed().isEmpty() || choice.allowed().contains(word))) {
                throw new IllegalArgumentException(
                        "The " + choice.key() + " (" + word + ") must be one of " + choice.allowed());
            }
        }
        settings = Collections.unmodifiableMap(new EnumMap<>(settings));
        choices = Collections.unmodifiableMap(new EnumMap<>(choices));
    }

    public double value(Scalar scalar) {
        return settings.get(scalar).value();
    }

    /** Of a scalar that is {@link Scalar#whole()}. */
    public int whole(Scalar scalar) {
        return Math.toIntExact((long) value(scalar));
    }

    /** What mending one leak-damaged opening costs, USD. */
    public ThreePoint repairUsd() {
        return new ThreePoint(
                value(Scalar.REPAIR_COST_LOW_USD), value(Scalar.REPAIR_COST_USD), value(Scalar.REPAIR_COST_HIGH_USD));
    }

    public String choice(Choice choice) {
        return choices.get(choice);
    }

    /** A choice whose words are the constants of an enum. */
    public <E extends Enum<E>> E choice(Choice choice, Class<E> type) {
        String word = choice(choice);
        for (E constant : type.getEnumConstants()) {
            if (constant.name().equalsIgnoreCase(word)) {
                return constant;
            }
        }
        throw new IllegalArgumentException(word + " is not a " + type.getSimpleName());
    }

    /** The region whose wages a house's work is paid by: its own, else that of the scenario. */
    public String regionOf(House house) {
        return house.region().orElse(choice(Choice.REGION));
    }

    /** The two methods that are set side by side. */
    public Contrast contrast() {
        return Contrast.of(choice(Choice.METHODS));
    }

    /** The scalar as a leaf of an explanation. */
    public Amount amount(Scalar scalar) {
        return Amount.given(
                scalar.key(), value(scalar), scalar.unit(), settings.get(scalar).origin());
    }

    /** The same with one scalar changed. */
    public Scenario with(Scalar scalar, double value) {
        Map<Scalar, Setting> changed = new EnumMap<>(settings);
        changed.put(scalar, settings.get(scalar).with(value));
        return new Scenario(changed, choices);
    }

    /** The same with one choice changed. */
    public Scenario with(Choice choice, String word) {
        Map<Choice, String> changed = new EnumMap<>(choices);
        changed.put(choice, word);
        return new Scenario(settings, changed);
    }
}
