package weatherlap.sim.geometry;

import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Our rectangles as geometries of another library. */
final class Jts {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Jts() {}

    static Geometry of(Rect rect) {
        return FACTORY.toGeometry(new Envelope(rect.leftIn(), rect.rightIn(), rect.bottomIn(), rect.topIn()));
    }

    static Geometry union(Collection<Rect> rects) {
        List<Geometry> parts =
                rects.stream().filter(rect -> !rect.isEmpty()).map(Jts::of).toList();
        return parts.isEmpty() ? FACTORY.createPolygon() : UnaryUnionOp.union(parts);
    }
}
