package weatherlap.analysis.plan;

import java.util.BitSet;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/**
 * Ways of doing the first openings of a wall, each with every way of doing one more. They are priced all together and made one by one,
 * since few of them are asked for. Their places are counted from 0: those after the first of the shorter ways, those after the second.
 */
final class LongerWays {
    private final FirstOpenings[] firsts;
    private final Way[] ways;
    private final BitSet siding;
    private final double[] usd;
    private final byte[] methods;

    /** @param siding panels to take down for the one more opening, where its method does */
    LongerWays(Wall wall, FirstOpenings[] firsts, Way[] ways, BitSet siding) {
        this.firsts = firsts;
        this.ways = ways;
        this.siding = siding;
        usd = new double[firsts.length * ways.length];
        methods = new byte[usd.length];
        price(wall);
    }

    private void price(Wall wall) {
        double[] ownUsd = new double[ways.length];
        int[] bits = new int[ways.length];
        boolean[] takesDown = new boolean[ways.length];
        for (int w = 0; w < ways.length; w++) {
            ownUsd[w] = ways[w].horizonUsd();
            bits[w] = 1 << ways[w].method().ordinal();
            takesDown[w] = ways[w].method().takesSidingDown();
        }
        int place = 0;
        for (FirstOpenings first : firsts) {
            for (int w = 0; w < ways.length; w++) {
                int set = first.methods() | bits[w];
                methods[place] = (byte) set;
                usd[place++] = first.usd(wall, ownUsd[w], set, takesDown[w] ? first.panels(siding) : first.panels());
            }
        }
    }

    /** All of them, made. */
    static FirstOpenings[] all(FirstOpenings[] firsts, Way[] ways, BitSet siding) {
        FirstOpenings[] all = new FirstOpenings[firsts.length * ways.length];
        int place = 0;
        for (FirstOpenings first : firsts) {
            for (Way way : ways) {
                all[place++] = first.with(way, siding);
            }
        }
        return all;
    }

    int[] places() {
        int[] places = new int[usd.length];
        for (int place = 0; place < places.length; place++) {
            places[place] = place;
        }
        return places;
    }

    /** As an option, where the one more opening is the last of the wall. */
    WallOption option(int place) {
        return new WallOption(first(place), way(place), usd[place]);
    }

    /** To go on with. */
    FirstOpenings at(int place) {
        return first(place).with(way(place), siding);
    }

    private FirstOpenings first(int place) {
        return firsts[place / ways.length];
    }

    private Way way(int place) {
        return ways[place % ways.length];
    }

    /** Horizon cost without what the house bears once, USD, were they all that the wall has. */
    double usd(int place) {
        return usd[place];
    }

    /** Set of the methods used. */
    int methods(int place) {
        return methods[place];
    }
}
