package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * One house under every method that it is open to.
 *
 * @param named the two that the run sets side by side
 * @param methods by method
 * @param horizonUsd by method: horizon cost by draw, USD; not to be changed
 * @param shop by method: what the job is to the shop, by draw
 * @param elevations elevations with openings, in table order, each under every method
 * @param openings in table order, each under every method, one after the other
 */
@SuppressWarnings("ArrayRecordComponent") // draws, summed over houses by whoever needs the portfolio's
public record HouseResult(
        House house,
        Contrast named,
        Map<Method, MethodResult> methods,
        Map<Method, double[]> horizonUsd,
        Map<Method, ShopDraws> shop,
        List<ElevationResult> elevations,
        List<OpeningResult> openings) {
    public HouseResult {
        methods = Collections.unmodifiableMap(new EnumMap<>(methods));
        horizonUsd = Collections.unmodifiableMap(new EnumMap<>(horizonUsd));
        shop = Collections.unmodifiableMap(new EnumMap<>(shop));
        elevations = List.copyOf(elevations);
        openings = List.copyOf(openings);
    }

    /** Of the usual contrast, from the difference of its two; what it is to the shop is the same in every draw. */
    public HouseResult(
            House house,
            Map<Method, MethodResult> methods,
            double[] horizonDifferenceUsd,
            List<ElevationResult> elevations,
            List<OpeningResult> openings) {
        this(
                house,
                Contrast.USUAL,
                methods,
                Map.of(
                        Contrast.USUAL.at(house.cladding()).first(),
                        horizonDifferenceUsd,
                        Contrast.USUAL.at(house.cladding()).second(),
                        new double[horizonDifferenceUsd.length]),
                steady(methods, horizonDifferenceUsd.length),
                elevations,
                openings);
    }

    private static Map<Method, ShopDraws> steady(Map<Method, MethodResult> methods, int draws) {
        Map<Method, ShopDraws> steady = new EnumMap<>(Method.class);
        methods.forEach((method, result) -> steady.put(method, ShopDraws.steady(result, draws)));
        return steady;
    }

    /** @throws IllegalArgumentException where the house is not open to the method */
    public MethodResult method(Method method) {
        MethodResult result = methods.get(method);
        if (result == null) {
            throw new IllegalArgumentException("the house " + house.id() + " is not open to " + method.label());
        }
        return result;
    }

    /** The results of each opening by method, in table order. */
    public List<Map<Method, OpeningResult>> byOpening() {
        List<Map<Method, OpeningResult>> all = new ArrayList<>();
        Map<Method, OpeningResult> last = new EnumMap<>(Method.class);
        for (OpeningResult opening : openings) {
            if (all.isEmpty() || last.containsKey(opening.method())) {
                last = new EnumMap<>(Method.class);
                all.add(last);
            }
            last.put(opening.method(), opening);
        }
        return all;
    }

    /** The two that are set side by side at this house. */
    public Contrast contrast() {
        return named.at(house.cladding());
    }

    public MethodResult first() {
        return method(contrast().first());
    }

    public MethodResult second() {
        return method(contrast().second());
    }

    /** First less second of the contrast, horizon cost by draw, USD. */
    public double[] horizonDifferenceUsd() {
        double[] difference = horizonUsd.get(contrast().first()).clone();
        double[] second = horizonUsd.get(contrast().second());
        for (int d = 0; d < difference.length; d++) {
            difference[d] -= second[d];
        }
        return difference;
    }

    /** Of the two that are set side by side the one with the lower mean horizon cost. */
    public Method preferred() {
        return cheapest(contrast().both());
    }

    /** Share of the draws in which that one of the two costs less over the horizon. */
    public double preferredProbability() {
        return cheapestProbability(preferred(), contrast().both());
    }

    /** The method with the lowest mean horizon cost; where some are equal the last of them, which is the least work. */
    public Method cheapest() {
        return cheapest(methods.keySet());
    }

    /** Share of the draws in which no other method costs less over the horizon. */
    public double cheapestProbability(Method method) {
        return cheapestProbability(method, methods.keySet());
    }

    private Method cheapest(Collection<Method> among) {
        return cheapest(among, method -> method(method).horizonCostUsd().mean());
    }

    private double cheapestProbability(Method method, Collection<Method> among) {
        double[] own = horizonUsd.get(method);
        boolean[] beaten = new boolean[own.length];
        boolean after = false;
        for (Method other : among) {
            double[] usd = horizonUsd.get(other);
            for (int d = 0; other != method && d < own.length; d++) {
                beaten[d] |= after ? usd[d] <= own[d] : usd[d] < own[d];
            }
            after |= other == method;
        }
        int cheapest = 0;
        for (boolean isBeaten : beaten) {
            cheapest += isBeaten ? 0 : 1;
        }
        return (double) cheapest / own.length;
    }

    private static Method cheapest(Collection<Method> among, ToDoubleFunction<Method> usd) {
        Method cheapest = among.iterator().next();
        for (Method method : among) {
            cheapest = usd.applyAsDouble(method) <= usd.applyAsDouble(cheapest) ? method : cheapest;
        }
        return cheapest;
    }
}
