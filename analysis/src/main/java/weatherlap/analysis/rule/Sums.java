package weatherlap.analysis.rule;

import java.util.List;
import java.util.function.IntPredicate;

/**
 * Sums of the cost difference over the cases that answer yes to three questions, for all triples. With them, what any tree of three
 * questions costs needs no look at the cases, and sums over folds are subtracted from sums over all.
 *
 * @param size questions and one more, the last, that every case answers yes
 * @param cells at ((i · size) + j) · size + k
 */
@SuppressWarnings("ArrayRecordComponent") // private to the search
record Sums(int size, double[] cells) {

    /** Over the cases that are members. */
    static Sums of(List<Question> questions, double[] differences, IntPredicate member) {
        Sums sums = new Sums(questions.size() + 1, new double[cube(questions.size() + 1)]);
        int[] yes = new int[sums.size];
        for (int c = 0; c < differences.length; c++) {
            if (member.test(c)) {
                int count = 0;
                for (int q = 0; q < questions.size(); q++) {
                    if (questions.get(q).yes().get(c)) {
                        yes[count++] = q;
                    }
                }
                yes[count++] = questions.size();
                sums.add(yes, count, differences[c]);
            }
        }
        return sums;
    }

    private static int cube(int size) {
        return Math.toIntExact((long) size * size * size);
    }

    /** Only where i ≤ j ≤ k. */
    private void add(int[] yes, int count, double difference) {
        for (int a = 0; a < count; a++) {
            for (int b = a; b < count; b++) {
                int row = (yes[a] * size + yes[b]) * size;
                for (int c = b; c < count; c++) {
                    cells[row + yes[c]] += difference;
                }
            }
        }
    }

    Sums minus(Sums other) {
        double[] rest = cells.clone();
        for (int i = 0; i < rest.length; i++) {
            rest[i] -= other.cells[i];
        }
        return new Sums(size, rest);
    }

    /** Number of the question that every case answers yes. */
    int everyone() {
        return size - 1;
    }

    /** Yes to all three. */
    double sum(int i, int j, int k) {
        int low = Math.min(i, Math.min(j, k));
        int high = Math.max(i, Math.max(j, k));
        int middle = i + j + k - low - high;
        return cells[(low * size + middle) * size + high];
    }

    /** Each answer as given, by inclusion and exclusion. */
    double sum(int i, boolean iYes, int j, boolean jYes, int k) {
        if (!iYes) {
            return sum(everyone(), true, j, jYes, k) - sum(i, true, j, jYes, k);
        }
        return jYes ? sum(i, j, k) : sum(i, everyone(), k) - sum(i, j, k);
    }
}
