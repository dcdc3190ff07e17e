package weatherlap.reports.words;

import java.util.Locale;

/** What a family's sheet is written in. Numbers, dollars and inches are written as in the United States in all of them. */
public enum Language {
    EN,
    ES;

    /** As pages and the command line write it: en. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
