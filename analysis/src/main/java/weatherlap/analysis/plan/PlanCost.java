package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.NoSuchElementException;
import weatherlap.analysis.plan.Plan.WallPlan;
import weatherlap.sim.Sum;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/** What a plan costs the family and what chance of leak damage it leaves, from a method for each opening. */
final class PlanCost {
    /** As a share of a cost, or USD. */
    private static final double A_HAIR = 1e-9;

    private PlanCost() {}

    /** @param methods in table order over the walls */
    static Plan plan(PlanParts parts, List<Method> methods, double lossBoundUsd) {
        List<WallPlan> walls = new ArrayList<>();
        double price = 0;
        int used = 0;
        int first = 0;
        for (Wall wall : parts.walls()) {
            List<Method> own = methods.subList(first, first + wall.openings().size());
            first += own.size();
            walls.add(new WallPlan(wall.elevation(), own));
            price += wallUsd(wall, own);
            used |= PlanParts.mask(own);
        }
        price += methods.isEmpty() ? 0 : parts.setupUsd()[used];
        List<Way> ways = ways(parts.openings(), methods);
        double rest = Sum.of(ways, way -> way.damageUsd() + way.glassUsd());
        return new Plan(walls, price, price + rest, chance(ways), lossBoundUsd);
    }

    /** Part of the price that a wall bears, its openings done by these methods in their order. */
    static double wallUsd(Wall wall, List<Method> methods) {
        double price = 0;
        BitSet panels = new BitSet();
        for (int o = 0; o < methods.size(); o++) {
            Part part = wall.openings().get(o);
            price += way(part, methods.get(o)).priceUsd();
            if (methods.get(o).takesSidingDown()) {
                panels.or(part.panels());
            }
        }
        return price + sharedUsd(wall, PlanParts.mask(methods), panels.cardinality());
    }

    /** Part of the price that the openings of a wall share, so many panels taken down for them. */
    static double sharedUsd(Wall wall, int methods, int panels) {
        return wall.fixedUsd()[methods] + panels * wall.perPanelUsd()[methods];
    }

    /** 1 − mean over the draws of the product of what stays dry: openings share causes. */
    private static double chance(List<Way> ways) {
        if (ways.isEmpty()) {
            return 0;
        }
        return 1 - PlanSearch.mean(LeastRisk.product(ways));
    }

    /** A product of nothing yet, by draw. */
    static double[] ones(int draws) {
        double[] ones = new double[draws];
        Arrays.fill(ones, 1);
        return ones;
    }

    /** Past a cost by more than sums of costs are off, USD. */
    static double aHairPast(double usd) {
        return usd + A_HAIR * Math.max(1, Math.abs(usd));
    }

    static void times(double[] product, double[] factor) {
        for (int d = 0; d < product.length; d++) {
            product[d] *= factor[d];
        }
    }

    static double[] product(double[] one, double[] other) {
        double[] product = new double[one.length];
        product(one, other, product);
        return product;
    }

    static void product(double[] one, double[] other, double[] product) {
        for (int d = 0; d < product.length; d++) {
            product[d] = one[d] * other[d];
        }
    }

    /** Over the draws: four sums abreast, none of which waits for another. */
    static double sum(double[] values) {
        double a = 0;
        double b = 0;
        double c = 0;
        double e = 0;
        int d = 0;
        for (; d < values.length - 3; d += 4) {
            a += values[d];
            b += values[d + 1];
            c += values[d + 2];
            e += values[d + 3];
        }
        for (; d < values.length; d++) {
            a += values[d];
        }
        return a + b + c + e;
    }

    /** Horizon cost by draw, USD: price, glass, and damage as each draw has it. */
    static double[] horizonUsd(PlanParts parts, Plan plan) {
        double[] repair = parts.repair();
        double[] usd = new double[repair.length];
        for (Way way : ways(parts.openings(), plan.byOpening())) {
            double[] dry = way.dry();
            double glassUsd = way.glassUsd();
            double wet = way.damageUsd() == 0 ? 0 : usd.length - Sum.of(dry);
            double perChance = wet == 0 ? 0 : way.damageUsd() * usd.length / wet;
            for (int d = 0; d < usd.length; d++) {
                usd[d] += glassUsd + (1 - dry[d]) * perChance * repair[d];
            }
        }
        for (int d = 0; d < usd.length; d++) {
            usd[d] += plan.priceUsd();
        }
        return usd;
    }

    static List<Way> ways(List<Part> openings, List<Method> methods) {
        List<Way> ways = new ArrayList<>();
        for (int o = 0; o < openings.size(); o++) {
            ways.add(way(openings.get(o), methods.get(o)));
        }
        return ways;
    }

    private static Way way(Part part, Method method) {
        for (Way way : part.ways()) {
            if (way.method() == method) {
                return way;
            }
        }
        throw new NoSuchElementException(part.opening().id() + " is not open to " + method.label());
    }
}
