package weatherlap.reports.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.sim.house.Cladding;

class ProseTest {
    private static final String PROSE = Prose.all().collect(Collectors.joining(" "));

    @Test
    void readsLikeANewspaper() {
        assertThat(ReadingGrade.of(PROSE)).isLessThan(8);
        assertThat(Prose.all())
                .allSatisfy(line -> assertThat(ReadingGrade.of(line)).as(line).isLessThan(12));
    }

    /** By hand: 10 words, 1 sentence, 12 syllables: 3.9 + 14.16 − 15.59. */
    @Test
    void theGradeIsThatOfTheFormula() {
        assertThat(ReadingGrade.of("The rain ran down the wall and into the window."))
                .isCloseTo(0.39 * 10 + 11.8 * 1.2 - 15.59, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(ReadingGrade.syllables("window")).isEqualTo(2);
        assertThat(ReadingGrade.syllables("frame")).isEqualTo(1);
        assertThat(ReadingGrade.syllables("judgement")).isEqualTo(3); // one too many: the count errs to the strict side
        assertThat(ReadingGrade.of("Municipal authorities predominantly administer fenestration requirements."))
                .isGreaterThan(20);
    }

    @Test
    void sellsNothingAndFrightensNobody() {
        assertThat(List.of(
                        "best",
                        "amazing",
                        "beautiful",
                        "save",
                        "deal",
                        "guarantee",
                        "danger",
                        "disaster",
                        "never",
                        "must-have"))
                .allSatisfy(word -> assertThat(PROSE.toLowerCase(java.util.Locale.ROOT))
                        .doesNotContainPattern("\\b" + word + "\\b"));
        assertThat(PROSE).doesNotContain("!");
    }

    @ParameterizedTest
    @EnumSource(Cladding.class)
    void bothMethodsGetTheirDue(Cladding cladding) {
        List<String> whole = Prose.wholeCan(cladding);
        assertThat(Prose.INSERT).hasSameSizeAs(whole);
        for (int i = 0; i < Prose.INSERT.size(); i++) {
            assertThat(start(Prose.INSERT.get(i))).isEqualTo(start(whole.get(i)));
        }
    }

    @ParameterizedTest
    @EnumSource(Cladding.class)
    void nobodyIsToldOfLapsThatMasonryKeepsShut(Cladding cladding) {
        boolean lapped = cladding.inCourses();
        assertThat(Prose.methods(cladding).contains("rain barrier")).isEqualTo(lapped);
        assertThat(Prose.wholeCan(cladding).toString().contains("Can mend: bad laps"))
                .isEqualTo(lapped);
    }

    private static String start(String line) {
        return line.substring(0, line.indexOf(':'));
    }
}
