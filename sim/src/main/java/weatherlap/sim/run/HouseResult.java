package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

/**
 * One house under both methods.
 *
 * @param methods by method
 * @param horizonDifferenceUsd full-flange less insert, horizon cost by draw, USD; not to be changed
 * @param elevations elevations with openings, in table order, each under both methods
 * @param openings in table order, each under every method, one after the other
 */
@SuppressWarnings("ArrayRecordComponent") // draws, summed over houses by whoever needs the portfolio's
public record HouseResult(
        House house,
        Map<Method, MethodResult> methods,
        double[] horizonDifferenceUsd,
        List<ElevationResult> elevations,
        List<OpeningResult> openings) {
    public HouseResult {
        methods = Collections.unmodifiableMap(new EnumMap<>(methods));
        elevations = List.copyOf(elevations);
        openings = List.copyOf(openings);
    }

    public MethodResult method(Method method) {
        return methods.get(method);
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

    /** The method with the lower mean horizon cost; the insert, which is less work, where they are equal. */
    public Method preferred() {
        return method(Method.FULL_FLANGE).horizonCostUsd().mean()
                        < method(Method.INSERT).horizonCostUsd().mean()
                ? Method.FULL_FLANGE
                : Method.INSERT;
    }

    /** Share of the draws in which the method costs less over the horizon. */
    public double preferredProbability(Method method) {
        int better = 0;
        for (double difference : horizonDifferenceUsd) {
            if (method == Method.FULL_FLANGE ? difference < 0 : difference >= 0) {
                better++;
            }
        }
        return (double) better / horizonDifferenceUsd.length;
    }
}
