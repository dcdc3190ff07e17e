package weatherlap.sim.rain;

import java.util.OptionalDouble;
import weatherlap.sim.Check;
import weatherlap.sim.house.Terrain;

/**
 * Driving rain on a wall from hourly wind and rain.
 *
 * <pre>
 * I_A(θ) = (2/9) Σ v r^(8/9) cos(D − θ)     over hours with cos &gt; 0, divided by the years    L/(m² a)
 * I_WA   = I_A · C_R(z) · C_T · O · W
 * C_R(z) = K_R ln(max(z, z_min) / z0)
 * </pre>
 *
 * v: hourly wind at 10 m in open country, m/s; r: rain in the hour, mm; D: where the wind comes from; θ: outward normal of the wall.
 * C_T = 1: level ground, no cliff or steep hill upwind. The standard keeps the annual index for the moisture of the wall and the
 * spell index for penetration at joints, and does not claim places where a quarter of the rain comes in severe convective storms, or
 * much snow. Field studies find that both indices read low (Orr and Viles 2018).
 *
 * @see "ISO 15927-3:2009 (standard: equations and roughness; the tables of O and W are quoted from memory)"
 */
public final class Iso15927 {
    /** Topography coefficient C_T of level ground. */
    public static final double LEVEL_GROUND = 1;

    private static final double[] OBSTRUCTION_UP_TO_M = {8, 15, 25, 40, 60, 80, 100, 120};

    private Iso15927() {}

    /**
     * One hour's term of the airfield index, L/m².
     *
     * @param cosine of the angle between wind and outward normal; 0 or less: the wall is in the lee
     */
    static double hourlyLitresPerM2(double windMetresPerSecond, double rainMm, double cosine) {
        return cosine <= 0 ? 0 : 2.0 / 9.0 * windMetresPerSecond * rainPower(rainMm) * cosine;
    }

    static double rainPower(double rainMm) {
        return Math.pow(rainMm, 8.0 / 9.0);
    }

    /** Roughness coefficient C_R at a height over ground, m. */
    public static double roughness(Terrain terrain, double heightM) {
        Check.notNegative("height", heightM);
        return switch (terrain) {
            case OPEN_SEA_OR_FLAT -> roughness(0.17, 0.01, 2, heightM);
            case FARMLAND -> roughness(0.19, 0.05, 4, heightM);
            case SUBURBAN -> roughness(0.22, 0.3, 8, heightM);
            case URBAN -> roughness(0.24, 1, 16, heightM);
        };
    }

    private static double roughness(double factor, double lengthM, double lowestM, double heightM) {
        return factor * Math.log(Math.max(heightM, lowestM) / lengthM);
    }

    /** Obstruction factor O for the distance, m, to an upwind obstacle as tall as the wall; 1 where there is none. */
    static double obstruction(OptionalDouble distanceM) {
        if (distanceM.isEmpty()) {
            return 1;
        }
        double distance = Check.positive("obstruction distance", distanceM.getAsDouble());
        int step = 0;
        while (step < OBSTRUCTION_UP_TO_M.length && distance > OBSTRUCTION_UP_TO_M[step]) {
            step++;
        }
        return (2 + step) / 10.0;
    }

    /**
     * Wall factor W of a pitched-roof house, which holds an average overhang: 0.3 for an eaves wall of up to two storeys, 0.4 above;
     * 0.4 for a gable, the middle of 0.3 to 0.5.
     *
     * @param gable no eave over this wall
     */
    static double wallFactor(int storeys, boolean gable) {
        return gable || storeys > 2 ? 0.4 : 0.3;
    }
}
