package weatherlap.datasets.table;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The nearest known name, for a name that is not known. */
public final class Nearest {
    private static final int LONGEST = 64;

    private Nearest() {}

    /**
     * The candidate that the fewest edits reach, if at most a third of its letters change. A part left out or added at either end
     * ({@code vinyl} for {@code vinyl_siding}) counts as near too.
     */
    public static Optional<String> to(String name, Collection<String> candidates) {
        if (name.isBlank() || name.length() > LONGEST) {
            return Optional.empty();
        }
        String plain = plain(name);
        return candidates.stream()
                .filter(candidate -> isNear(plain, plain(candidate)))
                .min(Comparator.comparingInt((String candidate) -> distance(plain, plain(candidate)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** The candidate that the fewest edits reach, if at most a third of its letters change: a slip of the keys, no part of a name. */
    static Optional<String> misspelt(String name, Collection<String> candidates) {
        if (name.isBlank() || name.length() > LONGEST) {
            return Optional.empty();
        }
        String plain = plain(name);
        return candidates.stream()
                .filter(candidate -> isFewEditsAway(plain, plain(candidate)))
                .min(Comparator.comparingInt((String candidate) -> distance(plain, plain(candidate)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** {@code ; the nearest is "x"}, or nothing. */
    public static String hint(String name, Collection<String> candidates) {
        return to(name, candidates)
                .map(candidate -> "; did you mean \"" + candidate + "\"?")
                .orElse("");
    }

    private static boolean isNear(String name, String candidate) {
        boolean part = name.length() >= 3 && (candidate.startsWith(name) || candidate.endsWith(name));
        return part || isFewEditsAway(name, candidate);
    }

    private static boolean isFewEditsAway(String name, String candidate) {
        return distance(name, candidate) <= Math.max(1, candidate.length() / 3);
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(java.util.Locale.ROOT).replace(' ', '_').replace('-', '_');
    }

    /**
     * Insertions, deletions, substitutions and swaps of neighbours that turn one text into the other (optimal string alignment).
     *
     * @see "Damerau 1964, Communications of the ACM 7(3), 171-176; Levenshtein 1966, Soviet Physics Doklady 10(8), 707-710"
     */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 ? j : j == 0 ? i : cheapest(a, b, d, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(String a, String b, int[][] d, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
