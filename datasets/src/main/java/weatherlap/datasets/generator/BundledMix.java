package weatherlap.datasets.generator;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A mix of houses that comes with the program. */
public enum BundledMix {
    /** Wood-frame houses of New York State: that of the demo. */
    NEW_YORK,
    /** Detached houses of the United States. */
    NATIONAL;

    /** The word that commands use for it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The mix that is called by one bare word; a file of that name needs a path, as in {@code ./national}. */
    public static Optional<BundledMix> of(Path path) {
        return Arrays.stream(values())
                .filter(mix -> mix.word().equals(path.toString()))
                .findFirst();
    }

    String file() {
        return word() + ".csv";
    }
}
