package weatherlap.reports.page;

/** Names within a page: letters, digits and hyphens, so that they stand in an address as they are. */
public final class Anchor {
    private Anchor() {}

    /** Of a row of a table; different rows have different names. */
    public static String of(String table, String row) {
        StringBuilder name = new StringBuilder("row-");
        (table + ":" + row).codePoints().forEach(c -> {
            if (c < 128 && Character.isLetterOrDigit(c)) {
                name.appendCodePoint(c);
            } else {
                name.append('-').append(Integer.toHexString(c)).append('-');
            }
        });
        return name.toString();
    }
}
