package weatherlap.sim.geometry;

import java.util.List;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.made.MadeHouse;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.made.MadeWall;

/** Invented openings and walls for the tests of this package. */
final class Measured {
    private Measured() {}

    /** A double hung in an aluminum frame. */
    static MadeOpening frame(double widthIn, double heightIn) {
        return MadeOpening.of("1").size(widthIn, heightIn).layers(2);
    }

    static Elevation wall(double widthFt, double eaveFt, double exposureIn, double panelIn, List<Opening> openings) {
        return MadeWall.of("N", openings)
                .size(widthFt, eaveFt)
                .courses(exposureIn, panelIn)
                .wall();
    }

    static House house(Cladding cladding, Elevation wall) {
        return MadeHouse.of("1", wall).built(1985).clad(cladding).storeys(2).house();
    }
}
