package weatherlap.charts.kit;

import java.awt.geom.Rectangle2D;
import java.util.function.DoubleUnaryOperator;

/**
 * From data to px in one plot.
 *
 * @param area the plot without its axes
 * @param x along the page
 * @param y down the page
 */
public record Scales(Rectangle2D area, DoubleUnaryOperator x, DoubleUnaryOperator y) {

    public double xPx(double value) {
        return x.applyAsDouble(value);
    }

    public double yPx(double value) {
        return y.applyAsDouble(value);
    }
}
