package weatherlap.sim;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class KeptTest {
    @Test
    void keepsTheFirstSoManyAndGivesBackTheRest() {
        Kept<Integer, String> kept = new Kept<>(2);
        assertThat(kept.get(1)).isNull();
        for (int i = 1; i <= 3; i++) {
            assertThat(kept.keep(i, "made " + i)).isEqualTo("made " + i);
        }
        assertThat(kept.get(1)).isEqualTo("made 1");
        assertThat(kept.get(2)).isEqualTo("made 2");
        assertThat(kept.get(3)).isNull();
    }
}
