package weatherlap.sim.assumptions;

/** When a house was built, as the lap-fault priors tell houses apart. */
public enum Era {
    BEFORE_1960,
    FROM_1960,
    FROM_1980,
    FROM_2000;

    public static Era of(int yearBuilt) {
        return yearBuilt < 1960 ? BEFORE_1960 : yearBuilt < 1980 ? FROM_1960 : yearBuilt < 2000 ? FROM_1980 : FROM_2000;
    }
}
