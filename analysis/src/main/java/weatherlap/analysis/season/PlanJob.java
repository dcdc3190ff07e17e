package weatherlap.analysis.season;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import weatherlap.analysis.plan.Plan;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.ShopDraws;

/**
 * What a plan is to the shop. A plan of one method is the job by that method. A mixed one takes of each method's days, minutes and warranty
 * the part that its windows have in the house done wholly so:
 *
 * <pre>
 *   days      = ⌈Σ_m days_m · t_m⌉        t_m: minutes at the windows of method m over those at all windows by m
 *   profit    = price · Σ_m p_m · profit_m / price_m     p_m: what windows of m have of the price of all windows in the plan
 *   callbacks = Σ_m callbacks_m · l_m     l_m: leak chances at the windows of m over those at all windows by m
 * </pre>
 *
 * <p>Own approximation: what two half-jobs lose by packing their days anew is left out.
 *
 * @param openings of the house, each by method
 */
record PlanJob(HouseResult house, List<Map<Method, OpeningResult>> openings, double meanRepairUsd) {
    private static final double A_MOMENT = 1e-9;

    PlanJob(HouseResult house, double meanRepairUsd) {
        this(house, house.byOpening(), meanRepairUsd);
    }

    JobOption option(Plan plan) {
        List<Method> methods = plan.byOpening();
        Map<Method, Double> minutes = shares(methods, o -> o.labourMinutes().mean());
        Map<Method, Double> leaks = shares(methods, OpeningResult::leakProbability);
        double gross = plan.priceUsd() * profitShare(methods);
        double[] grossDraws = new double[anyDraws().grossProfitUsd().length];
        double[] minuteDraws = new double[grossDraws.length];
        double days = 0;
        double warranty = 0;
        for (Map.Entry<Method, Double> part : minutes.entrySet()) {
            double share = part.getValue();
            MethodResult whole = house.method(part.getKey());
            ShopDraws draws = house.shop().get(part.getKey());
            days += share * whole.crewDays();
            warranty += leaks.get(part.getKey()) * whole.warrantyUsd();
            add(share, draws.grossProfitUsd(), grossDraws);
            add(share, draws.labourMinutes(), minuteDraws);
        }
        return new JobOption(
                plan,
                Math.max(1, (int) Math.ceil(days - A_MOMENT)),
                gross,
                meanRepairUsd == 0 ? 0 : warranty / meanRepairUsd,
                plan.horizonCostUsd(),
                JobOption.about(gross, grossDraws),
                paces(minuteDraws));
    }

    private static void add(double share, double[] draws, double[] sum) {
        for (int d = 0; d < sum.length; d++) {
            sum[d] += share * draws[d];
        }
    }

    private ShopDraws anyDraws() {
        return house.shop().values().iterator().next();
    }

    private static double[] paces(double[] minutes) {
        double mean = 0;
        for (double m : minutes) {
            mean += m / minutes.length;
        }
        double[] paces = new double[minutes.length];
        for (int d = 0; d < paces.length; d++) {
            paces[d] = mean == 0 ? 1 : minutes[d] / mean;
        }
        return paces;
    }

    /** By method: what its windows in the plan have of all windows done by it. */
    private Map<Method, Double> shares(List<Method> methods, ToDoubleFunction<OpeningResult> of) {
        Map<Method, Double> own = new EnumMap<>(Method.class);
        Map<Method, Double> all = new EnumMap<>(Method.class);
        Map<Method, Integer> windows = new EnumMap<>(Method.class);
        for (int o = 0; o < methods.size(); o++) {
            Method method = methods.get(o);
            own.merge(method, of.applyAsDouble(openings.get(o).get(method)), Double::sum);
            windows.merge(method, 1, Integer::sum);
        }
        for (Map<Method, OpeningResult> opening : openings) {
            own.keySet().forEach(method -> all.merge(method, of.applyAsDouble(opening.get(method)), Double::sum));
        }
        own.replaceAll((method, part) ->
                all.get(method) == 0 ? (double) windows.get(method) / openings.size() : part / all.get(method));
        return own;
    }

    /** Gross profit as a share of the plan's price. */
    private double profitShare(List<Method> methods) {
        double price = 0;
        double profit = 0;
        for (int o = 0; o < methods.size(); o++) {
            MethodResult whole = house.method(methods.get(o));
            double own = openings.get(o).get(methods.get(o)).priceUsd();
            price += own;
            profit += whole.priceUsd() == 0 ? 0 : own * whole.grossProfitUsd() / whole.priceUsd();
        }
        return price == 0 ? 0 : profit / price;
    }
}
