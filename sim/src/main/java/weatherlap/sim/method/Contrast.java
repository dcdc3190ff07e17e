package weatherlap.sim.method;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.sim.house.Cladding;

/**
 * The two methods that a run sets side by side, chosen once; whoever compares asks for the first and the second. Differences are the
 * first less the second.
 */
public record Contrast(Method first, Method second) implements Serializable {
    public static final Contrast USUAL = new Contrast(Method.FULL_FLANGE, Method.INSERT);

    public Contrast {
        if (first == second) {
            throw new IllegalArgumentException("a contrast is between two methods, not " + first.word() + " twice");
        }
    }

    /** Every two methods, in either order, the usual ones first. */
    public static List<Contrast> all() {
        return Stream.concat(
                        Stream.of(USUAL), Arrays.stream(Method.values()).flatMap(first -> Arrays.stream(Method.values())
                                .filter(second -> second != first)
                                .map(second -> new Contrast(first, second))))
                .distinct()
                .toList();
    }

    /** As tables write it, such as {@code full_flange,insert}. */
    public String word() {
        return first.word() + "," + second.word();
    }

    /** @throws java.util.NoSuchElementException where the text is the {@link #word} of no contrast */
    public static Contrast of(String word) {
        return all().stream()
                .filter(contrast -> contrast.word().equals(word))
                .findFirst()
                .orElseThrow();
    }

    public List<Method> both() {
        return List.of(first, second);
    }

    /** Whether a method is one of the two. */
    public boolean holds(Method method) {
        return method == first || method == second;
    }

    /** What a difference is, such as {@code full-flange less insert}. */
    public String less() {
        return first.label() + " less " + second.label();
    }

    /** Of the two the one that is not this. */
    public Method other(Method method) {
        return method == first ? second : first;
    }

    /** The better of the two by a difference of costs, first less second; the second where they cost the same. */
    public Method cheaper(double differenceUsd) {
        return differenceUsd < 0 ? first : second;
    }

    /** The same at a house: a method that its cladding leaves no way for gives its place to one that is not in the contrast. */
    public Contrast at(Cladding cladding) {
        Method one = first.isOpenTo(cladding) ? first : standIn(cladding, first);
        Method other = second.isOpenTo(cladding) ? second : standIn(cladding, one);
        return one == first && other == second ? this : new Contrast(one, other);
    }

    /** Of the two the one that leaves more of what is in the wall: the old frame, or else the laps of the barrier. */
    public Optional<Method> leaves() {
        return both().stream().filter(Method::keepsOldFrame).findFirst().or(() -> both().stream()
                .filter(method -> !method.reachesBarrier())
                .findFirst());
    }

    private Method standIn(Cladding cladding, Method taken) {
        for (Method method : Method.values()) {
            if (!holds(method) && method != taken && method.isOpenTo(cladding)) {
                return method;
            }
        }
        return first;
    }

    /** The method of this contrast in whose place one of the contrast at a house stands. */
    public Method named(Method there, Contrast atHouse) {
        return there == atHouse.first() ? first : second;
    }
}
