package weatherlap.datasets.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.Terrain;
import weatherlap.sim.rain.DrivingRainRose;
import weatherlap.sim.rain.Iso15927;
import weatherlap.sim.rain.RainClimate;

/** Driving rain in the invented town: its rose, and its eaves held against the survey of overhangs. */
class DemoRainTest {
    private static final double BARE_WALL = 0.5;
    private static final double STOREY_M = 2.7432;
    private static final RainClimate CLIMATE = RainClimate.of(DemoClimate.hourly(), scenario());

    private static Scenario scenario() {
        Map<Scalar, Setting> settings = new EnumMap<>(Scalar.class);
        for (Scalar scalar : Scalar.values()) {
            double value =
                    scalar == Scalar.SPELL_DRY_HOURS ? 96 : scalar == Scalar.SPELL_QUANTILE ? 0.67 : scalar.low();
            settings.put(
                    scalar,
                    new Setting(
                            scalar,
                            value,
                            Optional.empty(),
                            new Origin("scenario.toml", scalar.key(), Basis.INVENTED, "")));
        }
        Map<Choice, String> choices = new EnumMap<>(Choice.class);
        for (Choice choice : Choice.values()) {
            choices.put(choice, choice.allowed().stream().findFirst().orElse("here"));
        }
        return new Scenario(settings, choices);
    }

    @Test
    void theWeatherSideIsTheSouthAndTheNorthIsSheltered() {
        DrivingRainRose rose = DrivingRainRose.of(CLIMATE, 5);
        DrivingRainRose.Row wettest = rose.rows().stream()
                .filter(row -> row.isoRank() == 1)
                .findFirst()
                .orElseThrow();
        assertThat(wettest.bearingDeg()).isBetween(135.0, 225.0);
        assertThat(rose.rows().get(0).isoLitresPerM2Year()).isLessThan(wettest.isoLitresPerM2Year() / 3);
    }

    @Test
    void eavesProtectInTheOrderOfTheSurvey() {
        // Coastal British Columbia, 1996, 46 buildings of one to four storeys: about 90 % of walls had problems without
        // an overhang and
        // about 25 % with 24 in.; 70 % to 300 mm and 50 % to 600 mm are from memory. It counts walls and we count
        // water.
        double[] survey = {1, 0.70 / 0.90, 0.50 / 0.90, 0.25 / 0.90};
        double[] overhangM = {0, 0.15, 0.45, 0.61};
        double[] one = Arrays.stream(overhangM).map(p -> share(1, p)).toArray();
        double[] three = Arrays.stream(overhangM).map(p -> share(3, p)).toArray();
        for (int i = 1; i < overhangM.length; i++) {
            assertThat(one[i]).isLessThan(one[i - 1]);
            assertThat(three[i]).isLessThan(three[i - 1]);
            assertThat(one[i] - survey[i]).isBetween(-0.15, 0.15);
            assertThat(three[i] - survey[i]).isBetween(0.0, 0.45);
        }
    }

    /** Share of the rain on all walls that reaches windows 1.5 m high whose heads are 0.45 m below the top of each storey; a suburb. */
    private static double share(int storeys, double overhangM) {
        double free = 0;
        double reached = 0;
        for (int i = 0; i < 8 * storeys; i++) {
            var wall = CLIMATE.wall(45.0 * (i / storeys));
            double head = 0.45 + STOREY_M * (i % storeys);
            double wind = BARE_WALL * Iso15927.roughness(Terrain.SUBURBAN, storeys * STOREY_M - head);
            free += wall.isoLitresPerM2Year();
            reached += wall.isoLitresPerM2Year() * wall.meanShare(head, head + 1.5, overhangM, wind);
        }
        return reached / free;
    }
}
