package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ProgressLineTest {
    @Test
    void saysWhatIsDoneAndHowLongTheRestWillTakeAtThisPace() {
        assertThat(line(15, 60, 5)).isEqualTo("houses [=====>              ] 15 of 60, about 15 s left");
        assertThat(line(1, 1000, 7)).endsWith(" 1 of 1000, about 1 h 57 min left");
        assertThat(line(10, 30, 60)).endsWith(", about 2 min left");
    }

    @Test
    void guessesNothingBeforeItCanNorAtTheEnd() {
        assertThat(line(0, 60, 9)).endsWith(" 0 of 60");
        assertThat(line(30, 60, 0)).endsWith(" 30 of 60");
        assertThat(line(60, 60, 9)).endsWith("=] 60 of 60");
    }

    @Test
    void countsWhereNobodyKnowsHowManyStepsThereAre() {
        assertThat(ProgressLine.of("values tried", 12, 0, Duration.ofSeconds(30), 80))
                .isEqualTo("values tried: 12, 30 s");
    }

    @Property
    void fitsTheTerminal(@ForAll @IntRange(max = 1000) int done, @ForAll @IntRange(min = 50, max = 300) int width) {
        assertThat(ProgressLine.of("houses", done, 1000, Duration.ofSeconds(3), width)
                        .length())
                .isLessThanOrEqualTo(width);
    }

    private static String line(long done, long all, long seconds) {
        return ProgressLine.of("houses", done, all, Duration.ofSeconds(seconds), 55);
    }
}
