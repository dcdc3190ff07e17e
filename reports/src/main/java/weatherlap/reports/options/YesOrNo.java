package weatherlap.reports.options;

import java.util.Iterator;

/** The words of an option that is either on or off. */
public final class YesOrNo implements Iterable<String> {
    /** One of them. */
    public enum Word {
        YES,
        NO
    }

    @Override
    public Iterator<String> iterator() {
        return EnumWords.of(Word.class).iterator();
    }
}
