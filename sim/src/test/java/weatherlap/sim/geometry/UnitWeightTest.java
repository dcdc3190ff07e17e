package weatherlap.sim.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.geometry.UnitWeight.Lift;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;

class UnitWeightTest {
    private static final Opening ONE = Measured.frame(30, 40).opening();

    /** Three units under one flange go up in one piece; between the posts of an old frame each goes in by itself. */
    @Test
    void aMulledAssemblyIsLiftedWhole() {
        Opening mulled = Measured.frame(120, 60).mulled(3).opening();
        UnitWeight flanged = GlassTest.geometry(mulled, Method.FULL_FLANGE).weight();
        UnitWeight insert = GlassTest.geometry(mulled, Method.INSERT).weight();
        List<Lites> units =
                GlassTest.geometry(mulled, Method.FULL_FLANGE).replaced().units();
        double frameFt = units.stream()
                .mapToDouble(unit -> unit.unit().perimeterIn() / 12)
                .sum();

        assertThat(units).hasSize(3);
        assertThat(flanged.pieces()).isEqualTo(1);
        assertThat(flanged.frameLb()).isEqualTo(1.5 * frameFt, within(1e-9));
        assertThat(flanged.totalLb()).isGreaterThan(2 * 51);
        assertThat(flanged.lift()).isEqualTo(Lift.MORE_OR_A_MACHINE);
        assertThat(insert.pieces()).isEqualTo(3);
        assertThat(insert.totalLb()).isLessThan(flanged.totalLb() / 3);
    }

    @Test
    void onAnUpperFloorTwoPeopleLiftWhatOneLiftsBelow() {
        Opening upstairs = Measured.frame(30, 40).at(24, 140).opening();

        assertThat(GlassTest.geometry(ONE, Method.INSERT).weight().lift()).isEqualTo(Lift.ONE_PERSON);
        assertThat(GlassTest.geometry(upstairs, Method.INSERT).weight().lift()).isEqualTo(Lift.TWO_PEOPLE);
    }

    /** Limit 51 lb; the sheet prints whole pounds. */
    @ParameterizedTest
    @CsvSource({
        "50.4, ONE_PERSON",
        "50.5, TWO_PEOPLE",
        "51, TWO_PEOPLE",
        "102.4, TWO_PEOPLE",
        "102.6, MORE_OR_A_MACHINE"
    })
    void atTheLimitTwoPeopleLift(double lb, Lift lift) {
        assertThat(new UnitWeight(1, lb, 0, 51, false).lift()).isEqualTo(lift);
    }
}
