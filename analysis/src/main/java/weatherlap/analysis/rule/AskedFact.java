package weatherlap.analysis.rule;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.function.UnaryOperator;
import weatherlap.sim.Check;

/** One thing a measurer sees, for every case. */
public sealed interface AskedFact {
    /** Short name, as a column has. */
    String name();

    /** Cases. */
    int size();

    /** What may be asked about it, answered for every case. */
    List<Question> questions();

    /**
     * A number.
     *
     * @param asks the question for a threshold, true below it, such as {@code Is the overhang under 12 in.?}
     * @param thresholds tried, in this order
     */
    record Number(String name, UnaryOperator<String> asks, List<Double> values, List<Double> thresholds)
            implements AskedFact {
        public Number {
            Check.text("fact", name);
            values = List.copyOf(values);
            thresholds = List.copyOf(thresholds);
        }

        /** With a threshold at every multiple of a round step that parts the values. */
        public static Number byStep(String name, UnaryOperator<String> asks, List<Double> values, double step) {
            Check.positive("step", step);
            TreeSet<Double> thresholds = new TreeSet<>();
            if (!values.isEmpty()) {
                double low = new TreeSet<>(values).first();
                double high = new TreeSet<>(values).last();
                for (long i = (long) Math.floor(low / step) + 1; i * step <= high; i++) {
                    thresholds.add(i * step);
                }
            }
            return new Number(name, asks, values, List.copyOf(thresholds));
        }

        @Override
        public int size() {
            return values.size();
        }

        @Override
        public List<Question> questions() {
            List<Question> questions = new ArrayList<>();
            for (double threshold : thresholds) {
                String shown = new BigDecimal(String.valueOf(threshold))
                        .stripTrailingZeros()
                        .toPlainString();
                questions.add(new Question(asks.apply(shown), answers(size(), i -> values.get(i) < threshold)));
            }
            return questions;
        }
    }

    /**
     * A word out of a few.
     *
     * @param asks the question for a word, such as {@code Is the barrier housewrap?}
     */
    record Word(String name, UnaryOperator<String> asks, List<String> values) implements AskedFact {
        public Word {
            Check.text("fact", name);
            values = List.copyOf(values);
        }

        @Override
        public int size() {
            return values.size();
        }

        @Override
        public List<Question> questions() {
            List<Question> questions = new ArrayList<>();
            for (String word : new TreeSet<>(values)) {
                questions.add(new Question(asks.apply(word.replace('_', ' ')), answers(size(), i -> values.get(i)
                        .equals(word))));
            }
            return questions;
        }
    }

    private static BitSet answers(int size, IntPredicate yes) {
        BitSet answers = new BitSet(size);
        for (int i = 0; i < size; i++) {
            answers.set(i, yes.test(i));
        }
        return answers;
    }
}
