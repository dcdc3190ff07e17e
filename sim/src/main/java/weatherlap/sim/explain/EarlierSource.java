package weatherlap.sim.explain;

/** What a row rested on before something moved it, kept behind what it rests on now, in so many characters that a table takes the cell. */
public final class EarlierSource {
    private static final String BEFORE = "; before: ";
    private static final int LONGEST = 850;

    private EarlierSource() {}

    /** To stand behind a note; nothing where there was no source. */
    public static String of(String source) {
        return source.isEmpty() ? "" : BEFORE + source.substring(0, Math.min(source.length(), LONGEST));
    }

    /** The same; of a source that such a note begins already, what stands behind that note. */
    public static String ofFirst(String source, String note) {
        if (!source.startsWith(note)) {
            return of(source);
        }
        int at = source.indexOf(BEFORE);
        return at < 0 ? "" : source.substring(at);
    }
}
