package weatherlap.sim.rain;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/**
 * Driving rain on walls of every bearing, from hours of weather.
 *
 * <p>Where the winds of the weather are not those of the houses, every wall gets the mean of walls that face all ways, so that the way a
 * house faces decides nothing.
 *
 * <p>Walls are kept by whole degrees, each worked out when it is first asked for. Safe to share between threads: a wall depends on the
 * weather and the scenario alone, so it does not matter who asks first.
 */
public final class RainClimate {
    private static final int BEARINGS = 360;
    /** Apart by so many degrees, the walls whose mean is a wall that may face any way. */
    private static final int SPREAD_STEP_DEG = 15;

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

    /** Name of the weather, as sheets show it. */
    public String name() {
        return weather.name();
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
        int degree = degree(bearingDeg);
        WallRain wall = walls.get(degree);
        if (wall == null) {
            walls.compareAndSet(degree, null, weather.anyBearing() ? buildAny() : build(degree));
            wall = walls.get(degree);
        }
        return wall;
    }

    /**
     * Airfield annual index of a wall, L/m², mean of the years: that of {@link #wall}, without what else is known of it.
     *
     * @param bearingDeg likewise
     */
    public double isoLitresPerM2Year(double bearingDeg) {
        int degree = degree(bearingDeg);
        WallRain wall = walls.get(degree);
        return wall == null && !weather.anyBearing()
                ? isoLitresPerM2Year(hours(degree))
                : wall(degree).isoLitresPerM2Year();
    }

    /** Whether all walls get the same rain, since the winds are not those of the houses. */
    public boolean anyBearing() {
        return weather.anyBearing();
    }

    private int degree(double bearingDeg) {
        int asked = Math.floorMod(Math.round(Check.finite("bearing", bearingDeg)), BEARINGS);
        return weather.anyBearing() ? 0 : asked;
    }

    private WallRain build(int bearingDeg) {
        return WallRain.of("facing " + bearingDeg + "°", List.of(part(bearingDeg)));
    }

    private WallRain buildAny() {
        return WallRain.of(
                "mean of all bearings",
                IntStream.range(0, BEARINGS / SPREAD_STEP_DEG)
                        .mapToObj(i -> part(i * SPREAD_STEP_DEG))
                        .toList());
    }

    private WallRain.Part part(int bearingDeg) {
        WallHours hours = hours(bearingDeg);
        Spells spells = Spells.of(hours, years, dryHoursEndSpell);
        return new WallRain.Part(
                hours,
                isoLitresPerM2Year(hours),
                hours.ashraeLitres() / years.years(),
                hours.straubeLitres() / years.years(),
                spells.worst(),
                spells.quantile(spellQuantile),
                hours.yearSpread(years).orElse(assumedYearSpread));
    }

    private WallHours hours(int bearingDeg) {
        return new WallHours(wet, Math.sin(Math.toRadians(bearingDeg)), Math.cos(Math.toRadians(bearingDeg)));
    }

    private double isoLitresPerM2Year(WallHours hours) {
        return hours.isoLitres() / years.years();
    }
}
