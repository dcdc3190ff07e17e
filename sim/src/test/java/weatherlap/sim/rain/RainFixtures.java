package weatherlap.sim.rain;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Terrain;
import weatherlap.sim.made.MadeHouse;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.made.MadeWall;

/** Houses, scenarios and weather for the tests of driving rain. */
final class RainFixtures {
    private static final Map<Scalar, Double> VALUES = Map.of(
            Scalar.WALL_FACTOR_BARE, 0.5,
            Scalar.GROUND_LIMIT_MM, 0.0,
            Scalar.SPELL_DRY_HOURS, 96.0,
            Scalar.SPELL_QUANTILE, 0.67,
            Scalar.RUNOFF_HEIGHT_FT, 3.0,
            Scalar.RUNOFF_FRACTION, 0.3,
            Scalar.JOINT_STRIP_IN, 2.0,
            Scalar.FIELD_STRIP_IN, 12.0,
            Scalar.YEAR_SPREAD, 0.3);

    private RainFixtures() {}

    static Scenario scenario() {
        Map<Scalar, Setting> settings = new EnumMap<>(Scalar.class);
        for (Scalar scalar : Scalar.values()) {
            double value = VALUES.getOrDefault(scalar, scalar.low());
            Origin origin = new Origin("scenario.toml", scalar.key(), Basis.INVENTED, "");
            settings.put(scalar, new Setting(scalar, value, Optional.empty(), origin));
        }
        Map<Choice, String> choices = new EnumMap<>(Choice.class);
        for (Choice choice : Choice.values()) {
            choices.put(
                    choice,
                    choice.allowed().isEmpty() ? "here" : choice.allowed().get(0));
        }
        return new Scenario(settings, choices);
    }

    /** A steady wind and rain, for ever. */
    static HourlyWeather steady(int hours, double fromDeg, double windMetresPerSecond, double rainMm) {
        return new HourlyWeather(
                "steady",
                LocalDateTime.of(2001, 1, 1, 0, 0),
                filled(hours, fromDeg),
                filled(hours, windMetresPerSecond),
                filled(hours, rainMm),
                filled(hours, 10));
    }

    /** Wild weather without sense: dry four hours in five, all winds. */
    static HourlyWeather random(long seed, int years) {
        UniformRandomProvider rng = RandomSource.XO_SHI_RO_256_PP.create(seed);
        int hours = 8766 * years;
        double[] from = rng.doubles(hours, 0, 360).toArray();
        double[] speed = rng.doubles(hours, 0, 15).toArray();
        double[] rain = rng.doubles(hours)
                .map(u -> u < 0.8 ? 0 : -2 * Math.log((u - 0.8) / 0.2 + 1e-9))
                .toArray();
        return new HourlyWeather("random", LocalDateTime.of(2001, 1, 1, 0, 0), from, speed, rain, filled(hours, 10));
    }

    static double[] filled(int hours, double value) {
        double[] column = new double[hours];
        Arrays.fill(column, value);
        return column;
    }

    static Elevation elevation(double bearingDeg, double eaveFt, double overhangIn, Opening... openings) {
        return MadeWall.of("wall", openings)
                .facing(bearingDeg)
                .size(30, eaveFt)
                .under(overhangIn)
                .wall();
    }

    static Elevation obstructed(Elevation e, double distanceM) {
        return MadeWall.like(e).obstructed(distanceM).wall();
    }

    static House house(int storeys, Terrain terrain, Elevation... elevations) {
        return MadeHouse.of("h1", elevations).in(terrain).storeys(storeys).house();
    }

    /** An opening of 36 × 60 in. with its sill at a height over grade, ft. */
    static Opening opening(double sillFt) {
        return MadeOpening.of("w1").at(60, sillFt * 12).opening();
    }
}
