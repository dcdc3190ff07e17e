package weatherlap.datasets.madeup;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.datasets.jobs.JobItem;
import weatherlap.datasets.table.CsvText;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Normal;
import weatherlap.sim.random.Streams;

/**
 * What a made-up shop pays and asks. Every spread in it is invented: waste (1 + w) and prices vary by a tenth from shop to shop, units by
 * 8 %, the share of the price that is left by 3 points.
 *
 * @param waste by item id, fraction
 * @param prices of a package over those of the tables, by item id
 * @param units their prices over those of the tables, by method
 * @param margin gross margin that its prices aim at, fraction
 */
public record ShopMoney(
        Map<String, Double> waste, Map<String, Double> prices, Map<Method, Double> units, double margin) {
    private static final double WASTE_SPREAD = 0.1;
    private static final double PRICE_SPREAD = 0.1;
    private static final double UNIT_SPREAD = 0.08;
    private static final double MARGIN_SPREAD = 0.075;

    public ShopMoney {
        waste = Collections.unmodifiableMap(new LinkedHashMap<>(waste));
        prices = Map.copyOf(prices);
        units = Collections.unmodifiableMap(new EnumMap<>(units));
    }

    public static ShopMoney drawn(Assumptions assumptions, long seed) {
        Streams streams = new Streams(seed);
        Map<String, Double> waste = new LinkedHashMap<>();
        Map<String, Double> prices = new LinkedHashMap<>();
        for (Material item : assumptions.materials()) {
            double more = factor(WASTE_SPREAD, streams, "shop waste " + item.id());
            waste.put(item.id(), Math.max(0, (1 + item.wasteFraction()) * more - 1));
            prices.put(item.id(), factor(PRICE_SPREAD, streams, "shop price " + item.id()));
        }
        Map<Method, Double> units = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            units.put(method, factor(UNIT_SPREAD, streams, "shop units " + method));
        }
        double margin =
                assumptions.scenario().value(Scalar.GROSS_MARGIN) * factor(MARGIN_SPREAD, streams, "shop margin");
        return new ShopMoney(waste, prices, units, margin);
    }

    private static double factor(double spread, Streams streams, String name) {
        return Normal.factors(spread, MadeShop.uniform(streams.world(name)))[0];
    }

    /** {@code true-money.csv}: what, key, value. */
    public String text() {
        Stream<String> items = waste.keySet().stream()
                .flatMap(id ->
                        Stream.of(line("waste_fraction", id, waste.get(id)), line("price_factor", id, prices.get(id))));
        Stream<String> methods = Arrays.stream(Method.values())
                .map(method -> line("price_factor", JobItem.UNITS + " " + method.word(), units.get(method)));
        return CsvText.line("what", "key", "value")
                + Stream.of(items, methods, Stream.of(line("gross_margin", "", margin)))
                        .flatMap(lines -> lines)
                        .collect(Collectors.joining());
    }

    private static String line(String what, String key, double value) {
        return CsvText.line(what, key, CsvText.cell(Math.rint(value * 1e6) / 1e6));
    }
}
