package weatherlap.datasets.climate;

import weatherlap.sim.rain.HourlyWeather;

/** The bundled weather: ten years of an invented town, made from the bundled table and a fixed seed each time it is asked for. */
public final class DemoClimate {
    /** Any number; results change with it. */
    private static final long SEED = 20_110_101;

    private static final String NAME = "Elder Cove (invented)";

    private DemoClimate() {}

    public static HourlyWeather hourly() {
        return WeatherGenerator.generate(NAME, GeneratorParameters.bundled(), SEED);
    }
}
