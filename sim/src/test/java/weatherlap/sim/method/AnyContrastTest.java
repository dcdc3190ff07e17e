package weatherlap.sim.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import weatherlap.sim.house.Cladding;

/** Any two methods can be set side by side, in either order. */
class AnyContrastTest {
    @Test
    void everyTwoOfThreeInEitherOrderTheUsualFirst() {
        assertThat(Contrast.all()).hasSize(6).startsWith(Contrast.USUAL).doesNotHaveDuplicates();
        assertThat(Contrast.all())
                .allSatisfy(contrast -> assertThat(Contrast.of(contrast.word())).isEqualTo(contrast));
        assertThatThrownBy(() -> Contrast.of("insert,insert")).isInstanceOf(NoSuchElementException.class);
    }

    /** No flanged unit fits behind brick: what is not named stands in its place, never the other one twice. */
    @Test
    void behindBrickTheTwoAreAlwaysFullFrameAndInsert() {
        assertThat(Contrast.all()).allSatisfy(contrast -> assertThat(
                        contrast.at(Cladding.BRICK_VENEER).both())
                .containsExactlyInAnyOrder(Method.FULL_FRAME, Method.INSERT));
        assertThat(Contrast.all()).allSatisfy(contrast -> assertThat(contrast.at(Cladding.VINYL_SIDING))
                .isEqualTo(contrast));
    }

    @Test
    void aDifferenceIsTheFirstLessTheSecond() {
        assertThat(Contrast.of("full_frame,insert").less()).isEqualTo("full-frame less insert");
    }
}
