package weatherlap.sim.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.method.Method;

class GeometriesTest {
    private static final List<Method> METHODS = List.of(Method.values());

    /** Alike but for their place, upstairs and down, and each unlike in one thing: what is kept of one never stands for another. */
    @Test
    void whatIsKeptIsWhatIsWorkedOut() {
        List<Opening> openings = List.of(
                Measured.frame(35.5, 59.5).at(30, 24).opening(),
                Measured.frame(35.5, 59.5).at(90, 30).opening(),
                Measured.frame(35.5, 59.5).at(30, 150).opening(),
                Measured.frame(59.5, 35.5).opening(),
                Measured.frame(35.5, 59.5).mulled(2).opening(),
                Measured.frame(35.5, 59.5).layers(3).opening(),
                Measured.frame(35.5, 59.5).of(FrameMaterial.WOOD).opening(),
                Measured.frame(35.5, 59.5)
                        .opens(Operation.CASEMENT, Operation.DOUBLE_HUNG)
                        .opening(),
                Measured.frame(35.5, 59.5)
                        .opens(Operation.DOUBLE_HUNG, Operation.PICTURE)
                        .opening());
        Elevation wall = Measured.wall(60, 20, 4, 144, openings);
        House house = Measured.house(Cladding.VINYL_SIDING, wall);
        Geometries geometries = new Geometries(Bundled.ASSUMPTIONS);

        for (int time = 0; time < 2; time++) {
            for (Opening opening : openings) {
                assertThat(geometries.each(house, wall, opening, METHODS))
                        .usingRecursiveComparison()
                        .withEqualsForType(Double::equals, Double.class)
                        .isEqualTo(OpeningGeometry.each(house, wall, opening, METHODS, Bundled.ASSUMPTIONS));
            }
        }
    }

    @Test
    void aMethodThatComesLaterIsWorkedOutToo() {
        Opening opening = Measured.frame(35.5, 59.5).opening();
        Elevation wall = Measured.wall(60, 20, 4, 144, List.of(opening));
        House house = Measured.house(Cladding.VINYL_SIDING, wall);
        Geometries geometries = new Geometries(Bundled.ASSUMPTIONS);

        assertThat(geometries.each(house, wall, opening, List.of(Method.INSERT)))
                .extracting(OpeningGeometry::method)
                .containsExactly(Method.INSERT);
        assertThat(geometries.each(house, wall, opening, METHODS))
                .extracting(OpeningGeometry::method)
                .isEqualTo(METHODS);
    }
}
