package weatherlap.sim.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Opening;

class GlassTest {

    /**
     * Worked by hand from the totals of the bundled rows: a call-out W × H holds a frame W − 1/2 × H − 1/2; old aluminium hides 2.75 and
     * 4.25 in., a flanged vinyl unit 5.0 and 7.5; an insert is 1.75 in. smaller than the frame each way (two 3/4 in. edges of old
     * aluminium, 1/4 in. to shim) and hides 5.25 and 8.0.
     */
    @ParameterizedTest
    @CsvSource({"32, 54, 9.83, 8.47, 7.44", "36, 60, 12.57, 11.01, 9.85"})
    void callOutSizesShowTheGlassWorkedByHand(
            double calledWidthIn, double calledHeightIn, double today, double flanged, double insert) {
        Opening opening =
                Measured.frame(calledWidthIn - 0.5, calledHeightIn - 0.5).opening();

        assertThat(geometry(opening, Method.FULL_FLANGE).existing().glassFt2()).isEqualTo(today, within(0.005));
        assertThat(geometry(opening, Method.FULL_FLANGE).replaced().glassFt2()).isEqualTo(flanged, within(0.005));
        assertThat(geometry(opening, Method.INSERT).replaced().glassFt2()).isEqualTo(insert, within(0.005));
    }

    static OpeningGeometry geometry(Opening opening, Method method) {
        return geometry(opening, method, Bundled.ASSUMPTIONS);
    }

    static OpeningGeometry geometry(Opening opening, Method method, Assumptions assumptions) {
        Elevation wall = Measured.wall(40, 20, 4, 144, List.of(opening));
        return OpeningGeometry.of(Measured.house(Cladding.VINYL_SIDING, wall), wall, opening, method, assumptions);
    }
}
