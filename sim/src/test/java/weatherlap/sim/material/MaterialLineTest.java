package weatherlap.sim.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weatherlap.sim.work.WorkFixtures.item;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Material;

class MaterialLineTest {
    private static final Material TAPE = item("tape", Driver.TAPE_FT, 1, 0.1, 75, 30);

    /** Three openings of 40 ft with a tenth for waste are 132 ft: two rolls of 75 ft, and 18 ft are left over. */
    @Test
    void wholePackagesForTheHouse() {
        MaterialLine line = new MaterialLine(TAPE, new double[] {40, 40, 40}, new double[0], 0);
        assertThat(line.usedStock()).isEqualTo(120);
        assertThat(line.packages()).isEqualTo(2);
        assertThat(line.amount().value()).isEqualTo(60);
        assertThat(line.openingAmount(0).value()).isCloseTo(44.0 / 75 * 30, within(1e-12));
        assertThat(line.remainderAmount().value()).isCloseTo(18.0 / 75 * 30, within(1e-9));
    }

    @Test
    void aFullPackageDoesNotOpenAnother() {
        Material exact = item("tape", Driver.TAPE_FT, 0.1, 0, 0.3, 30);
        assertThat(new MaterialLine(exact, new double[] {1, 1, 1}, new double[0], 0).packages())
                .isEqualTo(1);
        assertThat(new MaterialLine(exact, new double[1], new double[0], 0).packages())
                .isZero();
    }

    @Property
    void openingsSharedAndRestMakeTheHouse(
            @ForAll @Size(max = 20) List<@DoubleRange(min = 0, max = 300) Double> openings,
            @ForAll @DoubleRange(min = 0, max = 50) double shared) {
        MaterialLine line =
                new MaterialLine(TAPE, openings.stream().mapToDouble(o -> o).toArray(), new double[] {shared}, 0);
        double sum = line.sharedAmount().value() + line.remainderAmount().value();
        for (int o = 0; o < openings.size(); o++) {
            sum += line.openingAmount(o).value();
        }
        assertThat(sum).isCloseTo(line.amount().value(), within(1e-8));
    }

    /** Validation. A 10.1 fl oz cartridge of 18.227 in³ fills 24.30 ft of a 1/4 in. square bead (by volume). */
    @Test
    void aCartridgeGoesAsFarAsItsVolume() {
        Material sealant = item("sealant", Driver.SEALANT_IN3, 1, 0, 10.1 * 231 / 128, 9);
        double bead = 24.30 * 12 * 0.25 * 0.25;
        assertThat(new MaterialLine(sealant, new double[] {bead}, new double[0], 0).inPackages(bead))
                .isCloseTo(1, within(0.001));
    }
}
