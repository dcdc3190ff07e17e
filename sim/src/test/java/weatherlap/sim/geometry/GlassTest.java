package weatherlap.sim.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;

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

    /**
     * By hand, called 36 x 60: a frame of 35.5 x 59.5 in an opening of 36 x 60. Less 1 in. each way a unit of 35 x 59 without a flange,
     * which hides 5 in. of its width and 7.5 of its height: 30 x 51.5 = 1,545 in² of glass.
     */
    @Test
    void aUnitWithoutAFlangeShowsTheGlassWorkedByHand() {
        OpeningGeometry geometry = geometry(Measured.frame(35.5, 59.5).opening(), Method.FULL_FRAME);

        assertThat(geometry.order().widthIn()).isEqualTo(35);
        assertThat(geometry.order().heightIn()).isEqualTo(59);
        assertThat(geometry.replaced().glassFt2()).isEqualTo(10.73, within(0.005));
    }

    @ParameterizedTest
    @MethodSource("rowsOfTheReadme")
    void theReadmeTellsWhatIsComputed(double[] row) {
        Opening opening = Measured.frame(row[0] - 0.5, row[1] - 0.5).opening();
        OpeningGeometry flanged = geometry(opening, Method.FULL_FLANGE);
        OpeningGeometry insert = geometry(opening, Method.INSERT);

        assertThat(flanged.existing().glassFt2()).isEqualTo(row[2], within(0.0051));
        assertThat(flanged.replaced().glassFt2()).isEqualTo(row[3], within(0.0051));
        assertThat(-100 * lostFraction(flanged)).isEqualTo(row[4], within(0.051));
        assertThat(insert.replaced().glassFt2()).isEqualTo(row[5], within(0.0051));
        assertThat(-100 * lostFraction(insert)).isEqualTo(row[6], within(0.051));
    }

    private static double lostFraction(OpeningGeometry geometry) {
        return geometry.glassLostFt2() / geometry.existing().glassFt2();
    }

    static List<double[]> rowsOfTheReadme() throws IOException {
        Pattern notNumeric = Pattern.compile("[|×\\s]+");
        List<double[]> rows = Files.readAllLines(Path.of("README.md")).stream()
                .filter(line -> line.matches("\\| \\d+ × \\d+ \\|.*"))
                .map(line -> notNumeric
                        .splitAsStream(line)
                        .filter(cell -> !cell.isEmpty())
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
        assertThat(rows).hasSize(6);
        return rows;
    }

    static OpeningGeometry geometry(Opening opening, Method method) {
        return geometry(opening, method, Bundled.ASSUMPTIONS);
    }

    static OpeningGeometry geometry(Opening opening, Method method, Assumptions assumptions) {
        Elevation wall = Measured.wall(40, 20, 4, 144, List.of(opening));
        return OpeningGeometry.of(Measured.house(Cladding.VINYL_SIDING, wall), wall, opening, method, assumptions);
    }
}
