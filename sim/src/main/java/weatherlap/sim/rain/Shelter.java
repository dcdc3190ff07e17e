package weatherlap.sim.rain;

import java.util.List;
import weatherlap.sim.explain.Amount;

/**
 * What keeps rain off a wall: the hour-by-hour overhang over a bare wall, or the published wall factor, which holds an average overhang.
 * Never both.
 */
sealed interface Shelter {
    /** Share of the free driving rain that arrives at a depth below the eave, 0 to 1. */
    double share(double depthM);

    /** Mean share between two depths below the eave. */
    double meanShare(double fromDepthM, double toDepthM);

    /** The mean share as an amount. */
    Amount explain(String where, double fromDepthM, double toDepthM);

    /** @param windFactor wind at the wall over wind at 10 m in open country */
    record HourlyOverhang(WallRain wall, double overhangM, double windFactor) implements Shelter {
        @Override
        public double share(double depthM) {
            return wall.share(depthM, overhangM, windFactor);
        }

        @Override
        public double meanShare(double fromDepthM, double toDepthM) {
            return wall.meanShare(fromDepthM, toDepthM, overhangM, windFactor);
        }

        @Override
        public Amount explain(String where, double fromDepthM, double toDepthM) {
            return Amount.formula(
                    "share of the rain that passes under the eave to " + where,
                    meanShare(fromDepthM, toDepthM),
                    "",
                    List.of(
                            Amount.given("overhang", overhangM, "m"),
                            Amount.given("top of it below the eave", fromDepthM, "m"),
                            Amount.given("bottom of it below the eave", toDepthM, "m"),
                            Amount.given("wind at the wall over wind in open country", windFactor, "")));
        }
    }

    /** The same share at every depth. */
    record Uniform(double share) implements Shelter {
        @Override
        public double share(double depthM) {
            return share;
        }

        @Override
        public double meanShare(double fromDepthM, double toDepthM) {
            return share;
        }

        @Override
        public Amount explain(String where, double fromDepthM, double toDepthM) {
            return Amount.given("wall factor as published over that of a bare wall", share, "");
        }
    }
}
