package weatherlap.reports.cli;

import java.time.Duration;

/** How far a stretch of work is, on one line: {@code houses [=====>      ] 26 of 60, about 7 s left}. */
final class ProgressLine {
    private static final int WIDEST_BAR = 40;
    private static final int NARROWEST_BAR = 5;
    /** Before that an estimate would jump about. */
    private static final Duration SETTLED = Duration.ofSeconds(1);

    private ProgressLine() {}

    /**
     * @param all steps; 0 where nobody knows how many
     * @param spent since the first step began
     * @param width of the terminal, columns
     */
    static String of(String task, long done, long all, Duration spent, int width) {
        String end = all == 0 ? " " + done + ", " + time(spent) : " " + done + " of " + all + left(done, all, spent);
        int bar = Math.min(WIDEST_BAR, width - task.length() - end.length() - 3);
        return task + (all == 0 || bar < NARROWEST_BAR ? ":" : " " + bar(done, all, bar)) + end;
    }

    /** The rest at the pace so far. */
    private static String left(long done, long all, Duration spent) {
        if (done == 0 || done >= all || spent.compareTo(SETTLED) < 0) {
            return "";
        }
        return ", about " + time(spent.multipliedBy(all - done).dividedBy(done)) + " left";
    }

    private static String bar(long done, long all, int width) {
        int full = (int) (width * Math.min(done, all) / all);
        String tip = full < width ? ">" : "";
        return "[" + "=".repeat(full) + tip + " ".repeat(width - full - tip.length()) + "]";
    }

    /** Rounded up to what people say: {@code 7 s}, {@code 2 min}, {@code 1 h 20 min}. */
    private static String time(Duration time) {
        long seconds = Math.max(1, time.plusMillis(999).toSeconds());
        if (seconds < 100) {
            return seconds + " s";
        }
        long minutes = (seconds + 59) / 60;
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }
}
