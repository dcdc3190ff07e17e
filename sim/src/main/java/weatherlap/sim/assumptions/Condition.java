package weatherlap.sim.assumptions;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.sim.Each;

/**
 * When a row applies: every term of one alternative must hold. Written {@code cladding=brick_veneer|stucco & storey=2|3}; a term
 * {@code name!=value} holds when the fact is none of the values, {@code year_built>=1955} and {@code year_built<1955} compare a fact that
 * is a number, and {@code or} between spaces parts alternatives. The empty condition always holds.
 */
public final class Condition {
    /** Always holds. */
    public static final Condition ALWAYS = new Condition(List.of(List.of()));

    private static final Pattern TERM = Pattern.compile("\\s*(\\w+)\\s*(!=|>=|<|=)([^=<>!]*)");

    /** In arrays: rows ask thousands of times a house. */
    private final Asked[][] alternatives;

    /** @param alternatives any of which suffices, each a list of terms that must all hold */
    public Condition(List<List<Term>> alternatives) {
        this.alternatives = alternatives.stream()
                .map(terms -> terms.stream().map(Asked::of).toArray(Asked[]::new))
                .toArray(Asked[][]::new);
    }

    /** Any of which suffices, each a list of terms that must all hold. */
    public List<List<Term>> alternatives() {
        return Each.of(List.of(alternatives), terms -> Each.of(List.of(terms), Asked::term));
    }

    private Stream<Term> terms() {
        return alternatives().stream().flatMap(List::stream);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Condition condition && alternatives().equals(condition.alternatives());
    }

    @Override
    public int hashCode() {
        return alternatives().hashCode();
    }

    @Override
    public String toString() {
        return alternatives().toString();
    }

    /** How a fact must stand to the values of a term. */
    public enum Relation {
        IS("="),
        IS_NOT("!="),
        /** The one value or a greater number. */
        FROM(">="),
        /** A number below the one value. */
        BELOW("<");

        private final String sign;

        Relation(String sign) {
            this.sign = sign;
        }

        private static Relation of(String sign) {
            return Arrays.stream(values())
                    .filter(relation -> relation.sign.equals(sign))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** One term; what compares numbers has one value. */
    public record Term(Fact fact, Relation relation, List<String> values) {
        public Term {
            values = List.copyOf(values);
        }

        private boolean holds(String value) {
            return switch (relation) {
                case IS -> values.contains(value);
                case IS_NOT -> !values.contains(value);
                case FROM -> Integer.parseInt(value) >= Integer.parseInt(values.get(0));
                case BELOW -> Integer.parseInt(value) < Integer.parseInt(values.get(0));
            };
        }
    }

    /**
     * A term with what it says of each word that its fact may be.
     *
     * @param byPlace in the order of {@link Fact#allowed}; none where any name is
     */
    @SuppressWarnings("ArrayRecordComponent") // looked up, never compared
    private record Asked(Term term, boolean[] byPlace) {
        static Asked of(Term term) {
            List<String> words = term.fact().allowed();
            boolean[] byPlace = new boolean[words.size()];
            for (int place = 0; place < byPlace.length; place++) {
                byPlace[place] = term.holds(words.get(place));
            }
            return new Asked(term, byPlace);
        }

        boolean holds(Facts facts) {
            int place = facts.place(term.fact());
            return byPlace.length > 0 ? byPlace[place] : term.holds(facts.word(term.fact()));
        }
    }

    /** Whether every term of an alternative holds. Facts of the openings are not known for shared rows: see {@link Fact}. */
    public boolean holds(Facts facts) {
        if (this == ALWAYS) {
            return true;
        }
        for (Asked[] terms : alternatives) {
            if (all(terms, facts)) {
                return true;
            }
        }
        return false;
    }

    private static boolean all(Asked[] terms, Facts facts) {
        for (Asked term : terms) {
            if (!term.holds(facts)) {
                return false;
            }
        }
        return true;
    }

    /** Whether it asks about a fact. */
    public boolean asks(Fact fact) {
        for (Asked[] terms : alternatives) {
            for (Asked one : terms) {
                if (one.term.fact() == fact) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Every value of a fact that it asks about. */
    public Set<String> valuesOf(Fact fact) {
        return terms().filter(term -> term.fact() == fact)
                .flatMap(term -> term.values().stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The facts it asks about. */
    public Set<Fact> facts() {
        return terms().map(Term::fact).collect(Collectors.toUnmodifiableSet());
    }

    /**
     * Reads a condition.
     *
     * @param askable the facts it may ask about
     * @throws IllegalArgumentException naming the term that is not of the form {@code fact=value|value} or the fact that is unknown
     */
    public static Condition parse(String text, List<Fact> askable) {
        if (text.isBlank()) {
            return ALWAYS;
        }
        return new Condition(Arrays.stream(text.split("\\sor\\s", -1))
                .map(terms -> Arrays.stream(terms.split("&", -1))
                        .map(term -> term(term, askable))
                        .toList())
                .toList());
    }

    private static Term term(String text, List<Fact> askable) {
        Matcher term = TERM.matcher(text);
        if (!term.matches() || term.group(3).isBlank()) {
            throw new IllegalArgumentException("\"" + text.strip() + "\" is not of the form fact=value|value");
        }
        Fact fact = Fact.of(term.group(1), askable);
        Relation relation = Relation.of(term.group(2));
        List<String> values =
                Arrays.stream(term.group(3).split("\\|", -1)).map(String::strip).toList();
        values.forEach(fact::check);
        boolean compares = relation == Relation.FROM || relation == Relation.BELOW;
        if (compares && (!fact.isNumber() || values.size() > 1)) {
            throw new IllegalArgumentException("\"" + text.strip() + "\" does not compare a number with one other");
        }
        return new Term(fact, relation, values);
    }
}
