package weatherlap.sim.rain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

@Label("The look-up of the share that passes under an eave")
class EaveShadowPropertyTest {
    private static final HourlyWeather WEATHER = RainFixtures.random(1, 1);
    private static final RainClimate CLIMATE = RainClimate.of(WEATHER, RainFixtures.scenario());
    private static final BruteForce REFERENCE = new BruteForce(WEATHER);

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    @Label("equals the sum over the hours to 1e-9, at a point and over a band")
    void equalsTheHours(
            @ForAll @IntRange(max = 359) int bearing,
            @ForAll @DoubleRange(min = 0.05, max = 1.5) double overhang,
            @ForAll @DoubleRange(min = 0, max = 8) double from,
            @ForAll @DoubleRange(min = 0.1, max = 3) double height,
            @ForAll @DoubleRange(min = 0.6, max = 1.3) double windFactor) {
        WallRain wall = CLIMATE.wall(bearing);
        assertThat(wall.share(from, overhang, windFactor))
                .isCloseTo(REFERENCE.share(bearing, from, overhang, windFactor), within(1e-9));
        assertThat(wall.meanShare(from, from + height, overhang, windFactor))
                .isCloseTo(REFERENCE.meanShare(bearing, from, from + height, overhang, windFactor), within(1e-9));
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    @Label("never falls with depth or wind, never rises with the overhang")
    void monotone(
            @ForAll @IntRange(max = 359) int bearing,
            @ForAll @DoubleRange(min = 0, max = 1.5) double overhang,
            @ForAll @DoubleRange(min = 0, max = 1) double more,
            @ForAll @DoubleRange(min = 0, max = 8) double depth,
            @ForAll @DoubleRange(min = 0.6, max = 1.3) double windFactor) {
        WallRain wall = CLIMATE.wall(bearing);
        double share = wall.share(depth, overhang, windFactor);
        double band = wall.meanShare(depth, depth + 1.5, overhang, windFactor);
        assertThat(share).isBetween(0.0, 1.0);
        assertThat(wall.share(depth + more, overhang, windFactor)).isGreaterThanOrEqualTo(share);
        assertThat(wall.share(depth, overhang, windFactor + more)).isGreaterThanOrEqualTo(share);
        assertThat(wall.share(depth, overhang + more, windFactor)).isLessThanOrEqualTo(share);
        assertThat(wall.meanShare(depth, depth + 1.5, overhang + more, windFactor))
                .isLessThanOrEqualTo(band + 1e-12);
        assertThat(band).isBetween(share - 1e-12, wall.share(depth + 1.5, overhang, windFactor) + 1e-12);
    }
}
