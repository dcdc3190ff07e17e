package weatherlap.datasets.portfolio;

import java.util.Comparator;

/** Whether names come in rising order, by letters or as people count: H2 before H10. Then none comes twice. */
final class Ascending {
    private String last = "";
    private boolean byLetters = true;
    private boolean byCount = true;

    /** Takes the next name; whether all so far rose. */
    boolean takes(String name) {
        byLetters = byLetters && last.compareTo(name) < 0;
        byCount = byCount && COUNTING.compare(last, name) < 0;
        last = name;
        return byLetters || byCount;
    }

    /** By letters, but runs of digits by the number that they write; leading zeros do not tell two names apart. */
    static final Comparator<String> COUNTING = (a, b) -> {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int endOfA = endOfDigits(a, i);
            int endOfB = endOfDigits(b, j);
            if (endOfA > i && endOfB > j) {
                String x = a.substring(i, endOfA).replaceFirst("^0+", "");
                String y = b.substring(j, endOfB).replaceFirst("^0+", "");
                int byNumber = x.length() == y.length() ? x.compareTo(y) : Integer.compare(x.length(), y.length());
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
    };

    private static int endOfDigits(String text, int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }
}
