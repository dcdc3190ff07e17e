package weatherlap.charts.kit;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Point shapes, centred on (0, 0), about equally large to the eye. */
public final class Marks {

    /** One shape a category, in the order in which they are given out. */
    public static final List<Shape> CATEGORY = List.of(
            new Ellipse2D.Double(-4, -4, 8, 8),
            new Rectangle2D.Double(-3.6, -3.6, 7.2, 7.2),
            polygon(0, -5, 4.6, 3.4, -4.6, 3.4),
            diamond(5),
            polygon(0, 5, 4.6, -3.4, -4.6, -3.4),
            polygon(
                    -1.5, -4.5, 1.5, -4.5, 1.5, -1.5, 4.5, -1.5, 4.5, 1.5, 1.5, 1.5, 1.5, 4.5, -1.5, 4.5, -1.5, 1.5,
                    -4.5, 1.5, -4.5, -1.5, -1.5, -1.5));

    private Marks() {}

    /** A method's mark for places where many stand side by side. */
    public static Shape small(MethodStyle method) {
        return AffineTransform.getScaleInstance(0.6, 0.6).createTransformedShape(method.mark());
    }

    public static Shape medium(MethodStyle method) {
        return AffineTransform.getScaleInstance(0.85, 0.85).createTransformedShape(method.mark());
    }

    public static Shape diamond(double half) {
        return polygon(0, -half, half, 0, 0, half, -half, 0);
    }

    private static Shape polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }
}
