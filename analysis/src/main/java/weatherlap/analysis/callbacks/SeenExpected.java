package weatherlap.analysis.callbacks;

import weatherlap.analysis.columns.Layout;

/**
 * Calls seen beside calls expected, of the jobs of one level of a factor.
 *
 * @param factor what the jobs are told apart by
 * @param openingYears followed
 * @param seen calls for leak damage
 * @param expected by the tables as they were
 * @param fitted by the fitted levels of the methods
 */
public record SeenExpected(
        String factor, String level, int jobs, double openingYears, int seen, double expected, double fitted) {
    public static final Layout<SeenExpected> TABLE = Layout.<SeenExpected>of(
                    "seen-expected.csv", "Seen and expected", "One level of a factor.")
            .text("factor", "by", "what the jobs are told apart by", SeenExpected::factor)
            .text("level", "level", "of the factor", SeenExpected::level)
            .whole("jobs", "jobs", "that were followed there", SeenExpected::jobs)
            .number(
                    "opening_years",
                    "window-years",
                    "years",
                    1,
                    "windows times years followed",
                    SeenExpected::openingYears)
            .whole("seen", "seen", "calls for leak damage, one a window", SeenExpected::seen)
            .number(
                    "expected",
                    "by the tables",
                    "calls",
                    2,
                    "reported by then, by the tables as they were",
                    SeenExpected::expected)
            .number(
                    "fitted",
                    "fitted",
                    "calls",
                    2,
                    "the same by the fitted levels of the methods",
                    SeenExpected::fitted)
            .build();
}
