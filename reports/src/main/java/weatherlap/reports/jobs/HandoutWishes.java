package weatherlap.reports.jobs;

import weatherlap.reports.words.Language;

/**
 * What a salesperson wants of a family's sheet.
 *
 * @param language that it is written in
 * @param prices whether it names them
 * @param inside whether a page for the salesperson alone is made with it
 * @param choice line that the family's page gave for what was ticked on it; empty: none
 */
public record HandoutWishes(Language language, boolean prices, boolean inside, String choice) {
    /** English, with prices, nothing besides. */
    public static final HandoutWishes NONE = new HandoutWishes(Language.EN, true, false, "");
}
