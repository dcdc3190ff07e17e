package weatherlap.datasets.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class NearestTest {
    /** Optimal string alignment counts 3 edits here, where the true Damerau distance is 2. */
    @Test
    void distanceOfTheTextbookPairs() {
        assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
        assertThat(Nearest.distance("ca", "ac")).isEqualTo(1);
        assertThat(Nearest.distance("ca", "abc")).isEqualTo(3);
    }

    @Test
    void aSlipOfTheFingerFindsItsName() {
        assertThat(Nearest.to("Frame-Widht-in", List.of("frame_height_in", "frame_width_in")))
                .contains("frame_width_in");
        assertThat(Nearest.to("vinyl", List.of("wood_lap", "vinyl_siding"))).contains("vinyl_siding");
    }

    @Test
    void whatIsFarFromEverythingHasNoNearest() {
        assertThat(Nearest.to("parlour", List.of("bedroom", "bath", "kitchen"))).isEmpty();
        assertThat(Nearest.to("", List.of("bath"))).isEmpty();
    }

    @Property(tries = 200)
    void distanceIsSymmetricAndZeroOnlyToItself(
            @ForAll @StringLength(max = 8) String a, @ForAll @StringLength(max = 8) String b) {
        assertThat(Nearest.distance(a, b)).isEqualTo(Nearest.distance(b, a));
        assertThat(Nearest.distance(a, b) == 0).isEqualTo(a.equals(b));
    }
}
