package weatherlap.reports.jobs;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.analysis.drivers.ChoiceSwing;
import weatherlap.analysis.drivers.Factor;
import weatherlap.analysis.drivers.Factors;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;

/** What a search for a break-even varies: a number, or a choice of words. */
sealed interface Varied {
    int MAP_CELLS = 9;

    String name();

    /**
     * A side of a map.
     *
     * @param title name, with its unit
     * @param values rising; of a choice the places of its words
     * @param set puts a value into assumptions
     */
    record Axis(
            String title, List<Double> values, List<String> labels, BiFunction<Assumptions, Double, Assumptions> set) {}

    /** Where it is laid along the side of a map. */
    Axis axis();

    /** @param span where to look */
    record OfNumber(Factor factor, Factor.Span span) implements Varied {
        @Override
        public String name() {
            return factor.name();
        }

        @Override
        public Axis axis() {
            List<Double> values = IntStream.range(0, MAP_CELLS)
                    .mapToObj(i -> span.low() + (span.high() - span.low()) * i / (MAP_CELLS - 1))
                    .toList();
            return new Axis(
                    factor.name() + (factor.unit().isEmpty() ? "" : ", " + factor.unit()),
                    values,
                    values.stream().map(v -> Factor.rounded(v)).toList(),
                    factor::assume);
        }
    }

    /** @param words that it may be, two or more */
    record OfWords(Choice choice, List<String> words) implements Varied {
        @Override
        public String name() {
            return choice.key();
        }

        Assumptions set(Assumptions assumptions, String word) {
            return assumptions.with(assumptions.scenario().with(choice, word));
        }

        @Override
        public Axis axis() {
            return new Axis(
                    name(),
                    IntStream.range(0, words.size()).mapToObj(i -> (double) i).toList(),
                    words,
                    (assumptions, place) -> set(assumptions, words.get(place.intValue())));
        }
    }

    /** Every name that may be varied. */
    static List<String> known(Assumptions base) {
        return Stream.concat(
                        Factors.all(base).stream().map(Factor::name),
                        Stream.of(Choice.values())
                                .filter(choice ->
                                        !ChoiceSwing.words(base, choice).isEmpty())
                                .map(Choice::key))
                .toList();
    }

    /** By its name; empty where there is none. */
    static Optional<Varied> named(Assumptions base, String name) {
        Optional<Varied> words = Choice.of(name)
                .map(choice -> new OfWords(choice, ChoiceSwing.words(base, choice)))
                .filter(choice -> !choice.words().isEmpty())
                .map(choice -> choice);
        return words.or(() -> Factors.named(base, name)
                .map(factor -> new OfNumber(factor, SoundSpan.of(factor, factor.search(), false, false, base))));
    }
}
