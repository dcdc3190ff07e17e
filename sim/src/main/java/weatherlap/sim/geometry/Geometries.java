package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.Kept;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Inside;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;

/**
 * Geometry of openings under some assumptions. Windows come in few sizes, so that most openings of a portfolio, unless their readings
 * were taken, are like one before in all but their place: what is worked out for one serves the others. Safe to share between threads.
 */
public final class Geometries {
    private static final int METHODS = Method.values().length;

    /** Kinds that are kept: some 20 MB. */
    private static final int MOST_KEPT = 4096;

    /** All of an opening without readings that its geometry hangs on, but for whether it is upstairs. */
    private record Alike(Opening.Kind kind, Inside inside) {
        @Override
        public boolean equals(Object other) { // as of the kind
            return other instanceof Alike alike
                    && kind.equals(alike.kind)
                    && inside.finish() == alike.inside.finish()
                    && inside.layers() == alike.inside.layers()
                    && inside.setbackIn().equals(alike.inside.setbackIn());
        }

        @Override
        public int hashCode() {
            return 31 * kind.hashCode() + inside.layers();
        }
    }

    private final Assumptions assumptions;
    /** By method, those that were asked for; the same whoever asks first. */
    private final Kept<Alike, OpeningGeometry[]> known = new Kept<>(MOST_KEPT);

    public Geometries(Assumptions assumptions) {
        this.assumptions = assumptions;
    }

    /** That of an opening of a house under some methods, in their order. */
    public List<OpeningGeometry> each(House house, Elevation elevation, Opening opening, List<Method> methods) {
        if (opening.readings().isPresent()) {
            return OpeningGeometry.each(house, elevation, opening, methods, assumptions);
        }
        OpeningGeometry[] byMethod = known(new Alike(opening.kind(), opening.inside()));
        boolean upstairs = house.storeyOf(elevation, opening) > 1;
        List<OpeningGeometry> each = new ArrayList<>(methods.size());
        for (Method method : methods) {
            if (byMethod[method.ordinal()] == null) {
                work(house, elevation, opening, methods, byMethod);
            }
            each.add(byMethod[method.ordinal()].of(opening, upstairs));
        }
        return each;
    }

    private void work(
            House house, Elevation elevation, Opening opening, List<Method> methods, OpeningGeometry[] byMethod) {
        for (OpeningGeometry one : OpeningGeometry.each(house, elevation, opening, methods, assumptions)) {
            byMethod[one.method().ordinal()] = one;
        }
    }

    private OpeningGeometry[] known(Alike alike) {
        OpeningGeometry[] byMethod = known.get(alike);
        return byMethod != null ? byMethod : known.keep(alike, new OpeningGeometry[METHODS]);
    }
}
