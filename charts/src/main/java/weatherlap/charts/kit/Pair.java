package weatherlap.charts.kit;

import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/** The same quantity for the two methods of a contrast. */
public record Pair<T>(T first, T second) {

    /** @param method one of the two */
    public T of(Contrast contrast, Method method) {
        return method == contrast.first() ? first : second;
    }
}
