package weatherlap.analysis.sensitivity;

/** A model whose factors are independent and uniform on (0, 1). */
@FunctionalInterface
public interface CubeModel {
    /**
     * Runs the model at many points.
     *
     * @param points one row a point, one column a factor
     * @return one row an outcome, one column a point
     */
    double[][] outcomes(double[][] points);
}
