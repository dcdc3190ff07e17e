package weatherlap.analysis.backtest;

/** Who foresees. */
public enum Seer {
    /** The tables of the run. */
    TABLES("tables", "the tables"),
    /** The same with rates, waste, prices, margin and leak level fitted to the other jobs. */
    CALIBRATED("calibrated", "calibrated"),
    /** The mean a window of the other jobs by that method, with their spread. */
    AVERAGE("average", "average a window");

    private final String word;
    private final String label;

    Seer(String word, String label) {
        this.word = word;
        this.label = label;
    }

    /** As tables have it. */
    public String word() {
        return word;
    }

    public String label() {
        return label;
    }
}
