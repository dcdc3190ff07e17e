package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.code.CodeRule;
import weatherlap.sim.code.RoomChange;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.house.House;
import weatherlap.sim.laps.LeakPath;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobCost;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;
import weatherlap.sim.run.OpeningResult.LeakCause;

/**
 * Sums the draws of a house up. Means of labour and material are exact, and that of a repair is: their causes are independent of all
 * others and have known means.
 */
final class HouseSummary {
    private final House house;
    private final MethodDraws draws;
    private final Scenario scenario;
    private final double[] openingPriceUsd;
    private final double glassExistingFt2;
    private final double glassFt2;
    private final double glassWorthUsdPerFt2;
    private final double[] horizonUsd;

    private HouseSummary(House house, MethodDraws draws, Scenario scenario) {
        this.house = house;
        this.draws = draws;
        this.scenario = scenario;
        openingPriceUsd = openingPriceUsd(draws);
        glassExistingFt2 = Sum.of(
                draws.takeoff().openings(),
                opening -> opening.geometry().existing().glassFt2());
        glassFt2 = Sum.of(
                draws.takeoff().openings(),
                opening -> opening.geometry().replaced().glassFt2());
        glassWorthUsdPerFt2 = glassWorthUsdPerFt2(scenario);
        horizonUsd = draws.leaks().damageUsd().clone();
        double sure = draws.priceUsd() + glassValueUsd();
        for (int d = 0; d < horizonUsd.length; d++) {
            horizonUsd[d] += sure;
        }
    }

    static HouseResult of(House house, Contrast contrast, Map<Method, MethodDraws> drawn, Assumptions assumptions) {
        Map<Method, HouseSummary> summaries = new EnumMap<>(Method.class);
        drawn.forEach((method, draws) -> summaries.put(method, new HouseSummary(house, draws, assumptions.scenario())));
        Map<Method, MethodResult> methods = new EnumMap<>(Method.class);
        Map<Method, double[]> horizonUsd = new EnumMap<>(Method.class);
        Map<Method, ShopDraws> shop = new EnumMap<>(Method.class);
        summaries.forEach((method, summary) -> {
            methods.put(method, summary.method());
            horizonUsd.put(method, summary.horizonUsd);
            shop.put(method, ShopDraws.of(summary.draws));
        });
        List<ElevationResult> elevations = new ArrayList<>();
        int first = 0;
        for (int e = 0; e < house.elevations().size(); e++) {
            int end = first + house.elevations().get(e).openings().size();
            if (first < end) {
                for (HouseSummary summary : summaries.values()) {
                    elevations.add(summary.elevation(e, first, end));
                }
            }
            first = end;
        }
        List<OpeningResult> openings = new ArrayList<>();
        for (int o = 0; o < house.openingCount(); o++) {
            for (HouseSummary summary : summaries.values()) {
                openings.add(summary.opening(o));
            }
        }
        return new HouseResult(house, contrast, methods, horizonUsd, shop, elevations, openings);
    }

    /** The house's price shared out by the direct cost of each opening. */
    private static double[] openingPriceUsd(MethodDraws draws) {
        double[] usd = draws.takeoff().directUsd(draws.takeoff().work().openingMaterialUsd());
        double all = Sum.of(usd);
        for (int o = 0; o < usd.length; o++) {
            usd[o] = draws.priceUsd() * usd[o] / all;
        }
        return usd;
    }

    private OpeningResult opening(int o) {
        OpeningTakeoff opening = draws.takeoff().openings().get(o);
        OpeningGeometry geometry = opening.geometry();
        return new OpeningResult(
                opening.elevation(),
                opening.opening(),
                geometry.method(),
                geometry.existing().glassFt2(),
                geometry.replaced().glassFt2(),
                geometry.clear().widthIn(),
                geometry.clear().heightIn(),
                geometry.clear().areaFt2(),
                opening.codeFlags(),
                geometry.order().widthIn(),
                geometry.order().heightIn(),
                draws.openingMinutes()[o],
                draws.openingUsd()[o],
                openingPriceUsd[o],
                opening.exposure(),
                LeakPath.expectedPastFirstLine(opening.leaks().paths()),
                draws.leaks().chance()[o].times(100),
                causes(o));
    }

    /** The largest first; by insertion: an opening has a dozen. */
    private List<LeakCause> causes(int o) {
        List<LeakPath> paths = draws.takeoff().openings().get(o).leaks().paths();
        double[] contribution = draws.leaks().contribution()[o];
        LeakCause[] causes = new LeakCause[contribution.length];
        for (int f = 0; f < causes.length; f++) {
            LapFault fault = paths.get(f).fault();
            int place = f;
            while (place > 0 && causes[place - 1].contribution() < contribution[f]) {
                causes[place] = causes[place - 1];
                place--;
            }
            causes[place] = new LeakCause(fault.id(), fault.tradeName(), contribution[f]);
        }
        return List.of(causes);
    }

    /** Of a wall, which has the openings from one on, up to another. */
    private ElevationResult elevation(int e, int first, int end) {
        List<OpeningTakeoff> openings = draws.takeoff().openings().subList(first, end);
        double[][] dry = Arrays.copyOfRange(draws.leaks().dry(), first, end);
        return new ElevationResult(
                house.elevations().get(e),
                draws.takeoff().method(),
                draws.takeoff().panelsDown().get(e),
                Sum.of(openings, opening -> opening.exposure().litresPerM2Year()) / openings.size(),
                100 * Summary.mean(HouseLeaks.any(dry, draws.costUsd().length)),
                draws.takeoff().work().elevations().get(e).meanMinutes(),
                Sum.of(Arrays.copyOfRange(openingPriceUsd, first, end))
                        + Sum.of(Arrays.copyOfRange(draws.leaks().means().damageUsd(), first, end))
                        + Sum.of(openings, opening -> opening.geometry().glassLostFt2()) * glassWorthUsdPerFt2);
    }

    private MethodResult method() {
        double exactMinutes = draws.takeoff().work().meanMinutes();
        JobCost expected = draws.expected();
        return new MethodResult(
                draws.takeoff().method(),
                glassExistingFt2,
                glassFt2,
                Summary.of(exactMinutes, draws.labourMinutes()).times(1 / Units.MINUTES_PER_HOUR),
                minutesByStep(),
                draws.weights().crewDays(),
                draws.materialUsd(),
                draws.priceUsd(),
                draws.pricing().priceUsd(draws.takeoff().work().setupCost()),
                Summary.of(draws.pricing().fullCostUsd(draws.priceUsd(), expected), draws.costUsd()),
                costParts(expected),
                draws.pricing().grossProfitUsd(draws.priceUsd(), expected),
                lossProbability(),
                Summary.of(HouseLeaks.any(draws.leaks().dry(), draws.costUsd().length))
                        .times(100),
                expectedDamageUsd(),
                glassValueUsd(),
                Summary.of(draws.priceUsd() + expectedDamageUsd() + glassValueUsd(), horizonUsd),
                flags());
    }

    private Map<String, Double> minutesByStep() {
        Map<String, Double> minutes = draws.takeoff().work().minutesByStep();
        minutes.put("travel", draws.weights().travelMinutes());
        return minutes;
    }

    private Map<String, Double> costParts(JobCost expected) {
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put("labour", expected.labourUsd());
        parts.put("material", expected.materialUsd());
        parts.put("overhead", expected.crewHours() * draws.pricing().overheadUsdPerCrewHour());
        parts.put("warranty", expected.warrantyUsd());
        parts.put("service", draws.priceUsd() * draws.pricing().serviceReserve());
        return parts;
    }

    private double lossProbability() {
        int lost = 0;
        for (double cost : draws.costUsd()) {
            if (cost > draws.priceUsd()) {
                lost++;
            }
        }
        return (double) lost / draws.costUsd().length;
    }

    /** Present worth of a square foot of glass over the horizon, USD. */
    static double glassWorthUsdPerFt2(Scenario scenario) {
        return scenario.value(Scalar.GLASS_VALUE_USD_PER_FT2_YEAR)
                * annuity(scenario.value(Scalar.DISCOUNT_RATE), scenario.whole(Scalar.HORIZON_YEARS));
    }

    private double glassValueUsd() {
        return (glassExistingFt2 - glassFt2) * glassWorthUsdPerFt2;
    }

    /**
     * Present worth of one dollar at the end of each year: (1 − (1 + i)^−n)/i, and n where i is 0.
     *
     * @see "ASTM E917, life-cycle cost practice (the formula); 5 %, 10 years: 7.721735"
     */
    static double annuity(double rate, double years) {
        return rate == 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
    }

    private double expectedDamageUsd() {
        return draws.leaks().means().allDamageUsd();
    }

    private List<String> flags() {
        Set<String> flags = new LinkedHashSet<>();
        for (RoomChange room : draws.takeoff().rooms()) {
            if (room.change().rule() == CodeRule.ESCAPE && room.change().worse()) {
                room.change().flag().ifPresent(flags::add);
            }
        }
        List<OpeningTakeoff> openings = draws.takeoff().openings();
        if (draws.takeoff().method().keepsOldFrame()
                && Each.any(openings, one -> one.opening().frame().rotten())) {
            flags.add("rotten_frame");
        }
        if (Each.any(openings, one -> !one.geometry().hasUnit())) {
            flags.add("no_unit_fits");
        }
        if (house.leadSafe()) {
            flags.add("lead_safe_work");
        }
        return List.copyOf(flags);
    }
}
