package weatherlap.datasets.portfolio;

import java.util.Comparator;
import java.util.Optional;

/** Whether names come in rising order, by letters or as people count: H2 before H10. A name may come several times in a row. */
final class Ascending {
    static final Comparator<String> BY_LETTERS = Comparator.naturalOrder();

    /** By letters, but runs of digits by the number that they write; of names that differ in leading zeros alone, by letters. */
    static final Comparator<String> BY_COUNT =
            ((Comparator<String>) Ascending::compareCounting).thenComparing(BY_LETTERS);

    private String last = "";
    private boolean byLetters = true;
    private boolean byCount = true;

    /** Takes the next name. */
    void take(String name) {
        byLetters = byLetters && BY_LETTERS.compare(last, name) <= 0;
        byCount = byCount && BY_COUNT.compare(last, name) <= 0;
        last = name;
    }

    /** Begins another table, which is to rise in the same way. */
    void restart() {
        last = "";
    }

    /** In which order all names came so far; empty: in neither. */
    Optional<Comparator<String>> order() {
        return byCount ? Optional.of(BY_COUNT) : byLetters ? Optional.of(BY_LETTERS) : Optional.empty();
    }

    private static int compareCounting(String a, String b) {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int endOfA = endOfDigits(a, i);
            int endOfB = endOfDigits(b, j);
            if (endOfA > i && endOfB > j) {
                int byNumber = compareNumbers(a, i, endOfA, b, j, endOfB);
                if (byNumber != 0) {
                    return byNumber;
                }
                i = endOfA;
                j = endOfB;
            } else if (a.charAt(i) != b.charAt(j)) {
                return Character.compare(a.charAt(i), b.charAt(j));
            } else {
                i++;
                j++;
            }
        }
        return Integer.compare(a.length() - i, b.length() - j);
    }

    /** Compares two runs of digits, however long. */
    private static int compareNumbers(String a, int fromA, int endOfA, String b, int fromB, int endOfB) {
        int i = afterZeros(a, fromA, endOfA);
        int j = afterZeros(b, fromB, endOfB);
        int byLength = Integer.compare(endOfA - i, endOfB - j);
        while (byLength == 0 && i < endOfA) {
            int byDigit = Character.compare(a.charAt(i++), b.charAt(j++));
            if (byDigit != 0) {
                return byDigit;
            }
        }
        return byLength;
    }

    private static int afterZeros(String text, int from, int end) {
        int i = from;
        while (i < end && text.charAt(i) == '0') {
            i++;
        }
        return i;
    }

    private static int endOfDigits(String text, int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }
}
