package weatherlap.datasets.table;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What came of reading: a value, or every error; warnings in either case.
 *
 * @param value empty exactly when there are errors
 */
public record Loaded<T>(Optional<T> value, List<Problem> errors, List<Problem> warnings) {
    public Loaded {
        if (value.isPresent() != errors.isEmpty()) {
            throw new IllegalArgumentException("A value is loaded exactly when there are no errors.");
        }
        errors = List.copyOf(errors);
        warnings = List.copyOf(warnings);
    }

    /** The value, unless anything went wrong. */
    public static <T> Loaded<T> of(Optional<T> value, Problems problems) {
        return new Loaded<>(problems.hasErrors() ? Optional.empty() : value, problems.errors(), problems.warnings());
    }

    /** A value with which nothing is wrong. */
    public static <T> Loaded<T> of(T value) {
        return new Loaded<>(Optional.of(value), List.of(), List.of());
    }

    /** What is made of the value, with the same errors and warnings. */
    public <R> Loaded<R> map(Function<T, R> made) {
        return new Loaded<>(value.map(made), errors, warnings);
    }

    /** @throws IllegalStateException with every error, for input that must be sound, such as what is bundled */
    public T orElseThrow() {
        return value.orElseThrow(() ->
                new IllegalStateException(errors.stream().map(Problem::toString).collect(Collectors.joining("\n"))));
    }
}
