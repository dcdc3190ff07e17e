package weatherlap.sim.assumptions;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * When a row applies: every term must hold. Written {@code cladding=brick_veneer|stucco & storey=2|3}; a term {@code name!=value} holds
 * when the fact is none of the values. The empty condition always holds.
 */
public record Condition(List<Term> terms) {
    /** Always holds. */
    public static final Condition ALWAYS = new Condition(List.of());

    public Condition {
        terms = List.copyOf(terms);
    }

    /** One term: the fact is (or, negated, is not) one of the values. */
    public record Term(Fact fact, boolean negated, List<String> values) {
        public Term {
            values = List.copyOf(values);
        }

        boolean holds(Map<Fact, String> facts) {
            String value = facts.get(fact);
            if (value == null) {
                throw new IllegalArgumentException("The fact " + fact + " is not known where the condition is asked.");
            }
            return negated != values.contains(value);
        }
    }

    /** Whether every term holds. Facts of the openings are not known for shared rows: see {@link Fact}. */
    public boolean holds(Map<Fact, String> facts) {
        for (Term term : terms) {
            if (!term.holds(facts)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Reads a condition.
     *
     * @throws IllegalArgumentException naming the term that is not of the form {@code fact=value|value} or the fact that is unknown
     */
    public static Condition parse(String text) {
        if (text.isBlank()) {
            return ALWAYS;
        }
        return new Condition(
                Arrays.stream(text.split("&", -1)).map(Condition::term).toList());
    }

    private static Term term(String text) {
        boolean negated = text.contains("!=");
        String[] sides = text.split(negated ? "!=" : "=", -1);
        if (sides.length != 2 || sides[0].isBlank() || sides[1].isBlank()) {
            throw new IllegalArgumentException("\"" + text.strip() + "\" is not of the form fact=value|value");
        }
        Fact fact = Fact.of(sides[0].strip());
        List<String> values =
                Arrays.stream(sides[1].split("\\|", -1)).map(String::strip).toList();
        values.forEach(fact::check);
        return new Term(fact, negated, values);
    }
}
