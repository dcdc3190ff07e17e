package weatherlap.reports.weather;

import java.util.List;
import java.util.function.Function;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.rain.HourlyWeather;
import weatherlap.sim.rain.RainClimate;

/** Rain on walls for scenarios that change: worked out anew only when something changes that rain depends on. */
public final class ClimateMemo implements Function<Scenario, RainClimate> {
    /** From so many years of weather on, the spread of the years is that of the weather, not the scenario's. */
    private static final double YEARS_WITH_A_SPREAD = 3;

    private final HourlyWeather weather;
    private List<Double> key = List.of();
    private RainClimate climate;

    public ClimateMemo(HourlyWeather weather) {
        this.weather = weather;
    }

    @Override
    public synchronized RainClimate apply(Scenario scenario) {
        boolean ownSpread = climate != null && climate.coverage().years() >= YEARS_WITH_A_SPREAD;
        List<Double> asked = List.of(
                scenario.value(Scalar.GROUND_LIMIT_MM),
                scenario.value(Scalar.SPELL_DRY_HOURS),
                scenario.value(Scalar.SPELL_QUANTILE),
                ownSpread ? 0 : scenario.value(Scalar.YEAR_SPREAD));
        if (climate == null || !asked.equals(key)) {
            climate = RainClimate.of(weather, scenario);
            key = asked;
        }
        return climate;
    }
}
