package weatherlap.datasets.generator;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.rng.UniformRandomProvider;

/** Draws for one house: each draw becomes a fact that later draws may depend on. */
final class Draw {
    private final Mix mix;
    private final UniformRandomProvider stream;
    private final Map<Property, String> facts = new EnumMap<>(Property.class);

    Draw(Mix mix, UniformRandomProvider stream) {
        this.mix = mix;
        this.stream = stream;
    }

    void know(Property property, String value) {
        facts.put(property, value);
    }

    String text(Property property) {
        String value = mix.draw(property, facts, stream.nextDouble());
        know(property, value);
        return value;
    }

    /** A whole number, uniform within the drawn range. */
    int whole(Property property) {
        return within(text(property));
    }

    /** The same; empty for {@code none}. */
    OptionalDouble number(Property property) {
        String value = text(property);
        return value.equals("none") ? OptionalDouble.empty() : OptionalDouble.of(within(value));
    }

    <E extends Enum<E>> E word(Property property, Class<E> type) {
        return Enum.valueOf(type, text(property).toUpperCase(Locale.ROOT));
    }

    private int within(String range) {
        int dots = range.indexOf("..");
        if (dots < 0) {
            return Integer.parseInt(range);
        }
        int low = Integer.parseInt(range.substring(0, dots));
        int high = Integer.parseInt(range.substring(dots + 2));
        return low + stream.nextInt(high - low + 1);
    }
}
