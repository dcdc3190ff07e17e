package weatherlap.analysis.backtest;

/** What of a job is foreseen. */
public enum JobAmount {
    HOURS("hours", "person-hours on site", "person-h", 1),
    DAYS("days", "working days", "days", 1),
    MATERIAL("material", "units and items", "USD", 0),
    PRICE("price", "price, as invoiced", "USD", 0),
    CALLS("calls", "calls for leak damage", "calls", 2);

    private final String word;
    private final String label;
    private final String unit;
    private final int decimals;

    JobAmount(String word, String label, String unit, int decimals) {
        this.word = word;
        this.label = label;
        this.unit = unit;
        this.decimals = decimals;
    }

    /** As tables have it. */
    public String word() {
        return word;
    }

    public String label() {
        return label;
    }

    public String unit() {
        return unit;
    }

    /** With how many it is shown. */
    public int decimals() {
        return decimals;
    }
}
