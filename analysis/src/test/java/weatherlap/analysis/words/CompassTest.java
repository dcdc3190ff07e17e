package weatherlap.analysis.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompassTest {
    /** Points are 22.5° apart. */
    @ParameterizedTest
    @CsvSource({
        "0, north (0°)",
        "11, north (11°)",
        "12, north-northeast (12°)",
        "90, east (90°)",
        "199, south-southwest (199°)",
        "225, southwest (225°)",
        "348, north-northwest (348°)",
        "349, north (349°)",
        "360, north (360°)"
    })
    void aBearingIsItsNearestPoint(double bearingDeg, String words) {
        assertThat(Compass.of(bearingDeg)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "22.4, 0", "22.5, 1", "90, 2", "337.4, 7", "337.5, 0", "359.9, 0"})
    void theCompassHasEightParts(double bearingDeg, int octant) {
        assertThat(Compass.octant(bearingDeg)).isEqualTo(octant);
    }

    @ParameterizedTest
    @CsvSource({"0, north, N", "67, northeast, NE", "68, east, E", "350, north, N"})
    void eachOfThemHasAWordAndLetters(double bearingDeg, String word, String letters) {
        assertThat(Compass.word(bearingDeg)).isEqualTo(word);
        assertThat(Compass.letters(bearingDeg)).isEqualTo(letters);
    }
}
