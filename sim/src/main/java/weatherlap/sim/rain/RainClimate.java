package weatherlap.sim.rain;

import java.util.concurrent.atomic.AtomicReferenceArray;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/**
 * Driving rain on walls of every bearing, from hours of weather.
 *
 * <p>Walls are kept by whole degrees, each worked out when it is first asked for. Safe to share between threads: a wall depends on the
 * weather and the scenario alone, so it does not matter who asks first.
 */
public final class RainClimate {
    private static final int BEARINGS = 360;

    private final WetHours wet;
    private final RainYears years;
    private final RainCoverage coverage;
    private final HourlyWeather weather;
    private final double dryHoursEndSpell;
    private final double spellQuantile;
    private final double assumedYearSpread;
    private final AtomicReferenceArray<WallRain> walls = new AtomicReferenceArray<>(BEARINGS);

    private RainClimate(HourlyWeather weather, Scenario scenario) {
        Check.positive("hours of the climate", weather.hours());
        double groundLimitMm = scenario.value(Scalar.GROUND_LIMIT_MM);
        wet = new WetHours(weather, groundLimitMm);
        years = RainYears.of(weather);
        coverage = RainCoverage.of(weather, groundLimitMm, years.years());
        this.weather = weather;
        dryHoursEndSpell = scenario.value(Scalar.SPELL_DRY_HOURS);
        spellQuantile = scenario.value(Scalar.SPELL_QUANTILE);
        assumedYearSpread = scenario.value(Scalar.YEAR_SPREAD);
    }

    /**
     * @param scenario gives the dry limit, the end and quantile of a spell, and the spread of years where the climate is short
     */
    public static RainClimate of(HourlyWeather weather, Scenario scenario) {
        return new RainClimate(weather, scenario);
    }

    /** What the weather holds and lacks. */
    public RainCoverage coverage() {
        return coverage;
    }

    /** Working days that rain takes, by the working hours and the limit of a scenario; worked out anew each time. */
    public RainDays rainDays(Scenario scenario) {
        return RainDays.of(weather, scenario);
    }

    /**
     * Driving rain on a wall.
     *
     * @param bearingDeg outward normal, degrees clockwise from north; taken to the nearest whole degree, closer than a wall is ever read,
     *     which moves the index by about 0.5 % of that of the wettest wall at most
     */
    public WallRain wall(double bearingDeg) {
        int degree = Math.floorMod(Math.round(Check.finite("bearing", bearingDeg)), BEARINGS);
        WallRain wall = walls.get(degree);
        if (wall == null) {
            walls.compareAndSet(degree, null, build(degree));
            wall = walls.get(degree);
        }
        return wall;
    }

    private WallRain build(int bearingDeg) {
        double east = Math.sin(Math.toRadians(bearingDeg));
        double north = Math.cos(Math.toRadians(bearingDeg));
        WallHours hours = new WallHours(wet, east, north);
        Spells spells = Spells.of(hours, years, dryHoursEndSpell);
        return new WallRain(
                bearingDeg,
                hours.isoLitres() / years.years(),
                hours.ashraeLitres() / years.years(),
                hours.straubeLitres() / years.years(),
                hours.count(),
                spells.worst(),
                spells.quantile(spellQuantile),
                hours.yearSpread(years).orElse(assumedYearSpread),
                EaveShadow.of(hours));
    }
}
