package weatherlap.sim.rain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Terrain;

/** Validation: the water that reaches openings against what others saw or scored, in rank and rough size. */
class SecondOpinionTest {
    private static final double MM_PER_INCH = 25.4;
    private static final double STOREY_FT = 9;
    private static final Scenario SCENARIO = RainFixtures.scenario();

    private static RainClimate climate;

    @BeforeAll
    static void read() {
        climate = RainClimate.of(Airports.hourly("newark"), SCENARIO);
    }

    @Test
    @DisplayName("overhang survey, coastal British Columbia, 1996: same rank; near it at one storey, too wet at three")
    void overhangSurvey() {
        // Share of walls with problems at overhangs of none, to 300, to 600 mm (these two from memory), and about 610
        // mm, over the
        // share with none. It counts walls, not water, and its buildings are one to four storeys: only rank and rough
        // size compare.
        double[] survey = {1, 0.70 / 0.90, 0.50 / 0.90, 0.25 / 0.90};
        double[] overhangMm = {0, 150, 450, 610};
        double[] low = shares(1, overhangMm);
        double[] high = shares(3, overhangMm);
        assertThat(new SpearmansCorrelation().correlation(survey, low)).isEqualTo(1);
        assertThat(new SpearmansCorrelation().correlation(survey, high)).isEqualTo(1);
        for (int i = 0; i < survey.length; i++) {
            assertThat(low[i] - survey[i]).isBetween(-0.16, 0.16);
            assertThat(high[i] - survey[i]).isBetween(0.0, 0.45);
        }
    }

    /** Share of the free driving rain that reaches openings of all storeys and eight bearings in a suburb. */
    private static double[] shares(int storeys, double[] overhangMm) {
        return Arrays.stream(overhangMm)
                .map(mm -> litres(Terrain.SUBURBAN, storeys, mm) / litres(Terrain.SUBURBAN, storeys, 0))
                .toArray();
    }

    @Test
    @DisplayName("risk score of E2/AS1 (New Zealand; its eaves row from memory): ranks elevations much the same")
    void riskMatrix() {
        List<double[]> pairs = new ArrayList<>();
        for (Terrain terrain : Terrain.values()) {
            for (int storeys = 1; storeys <= 3; storeys++) {
                for (double overhangMm : new double[] {0, 80, 150, 300, 400, 500, 600, 700}) {
                    pairs.add(new double[] {
                        windScore(terrain) + storeyScore(storeys) + eavesScore(overhangMm),
                        litres(terrain, storeys, overhangMm)
                    });
                }
            }
        }
        double spearman = new SpearmansCorrelation()
                .correlation(
                        pairs.stream().mapToDouble(p -> p[0]).toArray(),
                        pairs.stream().mapToDouble(p -> p[1]).toArray());
        assertThat(spearman).isBetween(0.8, 1.0);
    }

    /** Wind zone low or medium, high, very high: taken from the terrain. */
    private static int windScore(Terrain terrain) {
        return switch (terrain) {
            case URBAN, SUBURBAN -> 0;
            case FARMLAND -> 1;
            case OPEN_SEA_OR_FLAT -> 2;
        };
    }

    private static int storeyScore(int storeys) {
        return storeys == 1 ? 0 : storeys == 2 ? 2 : 4;
    }

    /** The row for one storey, used for all. */
    private static int eavesScore(double overhangMm) {
        return overhangMm > 600 ? 0 : overhangMm > 450 ? 1 : overhangMm > 100 ? 2 : 5;
    }

    /** Rain that reaches openings, L/m² a year, mean of all storeys and eight bearings. */
    private static double litres(Terrain terrain, int storeys, double overhangMm) {
        return IntStream.range(0, 8 * storeys)
                .mapToDouble(i -> {
                    var window = RainFixtures.opening(2.5 + STOREY_FT * (i / 8));
                    var wall = RainFixtures.elevation(
                            45.0 * (i % 8), STOREY_FT * storeys, overhangMm / MM_PER_INCH, window);
                    var house = RainFixtures.house(storeys, terrain, wall);
                    return OpeningRain.of(climate, house, wall, window, SCENARIO)
                            .exposure()
                            .litresPerM2Year();
                })
                .average()
                .orElseThrow();
    }
}
