package weatherlap.sim.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class CrewDaysTest {
    /** 3 × 200 min are 600 min, which a division would put into 1.5 days of 400; only two whole openings fit into a day. */
    @Test
    void anOpeningIsNotLeftOpenOvernight() {
        CrewDays packed = CrewDays.pack(390, 0, List.of(200.0, 200.0, 200.0));
        assertThat(packed.days()).isEqualTo(3);
        assertThat(packed.dayOfOpening()).containsExactly(1, 2, 3);
        assertThat(CrewDays.pack(400, 0, List.of(200.0, 200.0, 200.0)).days()).isEqualTo(2);
    }

    @Test
    void sharedWorkFillsWhatOpeningsLeave() {
        assertThat(CrewDays.pack(390, 180, List.of(200.0, 200.0)).days()).isEqualTo(2);
        assertThat(CrewDays.pack(390, 380, List.of(200.0, 200.0)).days()).isEqualTo(2);
        assertThat(CrewDays.pack(390, 381, List.of(200.0, 200.0)).days()).isEqualTo(3);
        assertThat(CrewDays.pack(400, 900, List.of(100.0)).days()).isEqualTo(3);
    }

    @Test
    void theLongestIsPackedFirst() {
        CrewDays packed = CrewDays.pack(400, 0, List.of(100.0, 300.0, 100.0, 300.0));
        assertThat(packed.days()).isEqualTo(2);
        assertThat(packed.dayOfOpening()).containsExactly(1, 1, 2, 2);
    }

    @Test
    void anOpeningLongerThanADayStartsInTheMorningAndRunsOn() {
        CrewDays packed = CrewDays.pack(400, 0, List.of(900.0, 300.0));
        assertThat(packed.dayOfOpening()).containsExactly(1, 3);
        assertThat(packed.days()).isEqualTo(3);
    }

    @Test
    void aDayWithoutTimeIsRefused() {
        assertThatThrownBy(() -> CrewDays.pack(0, 0, List.of(1.0))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aHouseTakesADay() {
        assertThat(CrewDays.pack(400, 0, List.of()).days()).isEqualTo(1);
    }

    @Property(tries = 200)
    void neverFewerDaysThanTheMinutesNeedAndNeverTwoHalfEmptyOnes(
            @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 1, max = 400) Double> openings) {
        double total = openings.stream().mapToDouble(m -> m).sum();
        int days = CrewDays.pack(400, 0, openings).days();
        assertThat(days).isGreaterThanOrEqualTo((int) Math.ceil(total / 400 - 1e-9));
        assertThat(days).isLessThanOrEqualTo((int) Math.ceil(2 * total / 400) + 1);
    }

    @Property(tries = 100)
    void theOrderOfTheTableDoesNotChangeTheDays(
            @ForAll @Size(min = 1, max = 20) List<@DoubleRange(min = 1, max = 400) Double> openings) {
        List<Double> turned = new java.util.ArrayList<>(openings);
        Collections.reverse(turned);
        assertThat(CrewDays.pack(400, 30, turned).days())
                .isEqualTo(CrewDays.pack(400, 30, openings).days());
    }
}
