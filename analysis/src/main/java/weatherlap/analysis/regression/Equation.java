package weatherlap.analysis.regression;

/**
 * One equation of a least-squares problem: Σ weights · coefficients = observed.
 *
 * @param columns of the coefficients that it asks about, each once
 * @param weights one for each of the columns
 * @param count for how many observations it stands, 0 or more; the equation is multiplied by the root of it
 */
public record Equation(int[] columns, double[] weights, double observed, double count) {
    public static Equation of(double[] row, double observed) {
        int[] columns = new int[row.length];
        for (int i = 0; i < row.length; i++) {
            columns[i] = i;
        }
        return new Equation(columns, row, observed, 1);
    }

    public double foreseen(double[] coefficients) {
        double sum = 0;
        for (int i = 0; i < columns.length; i++) {
            sum += weights[i] * coefficients[columns[i]];
        }
        return sum;
    }

    /** The same, pulling so many times as hard; it still stands for as many observations. */
    public Equation pulling(double times) {
        double root = Math.sqrt(times);
        double[] scaled = weights.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= root;
        }
        return new Equation(columns, scaled, root * observed, count);
    }
}
