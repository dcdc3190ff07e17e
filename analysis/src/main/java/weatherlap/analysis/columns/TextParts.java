package weatherlap.analysis.columns;

import java.util.List;

/** Takes the parts of a text, one after another. */
public interface TextParts {
    /** A word that comes again and again; the text of most cells is made of a few. */
    void add(String word);

    /** @param decimals shown after the point */
    void add(double number, int decimals);

    /** Words with ; between them. */
    default void add(List<String> words) {
        for (int i = 0; i < words.size(); i++) {
            if (i > 0) {
                add(";");
            }
            add(words.get(i));
        }
    }
}
