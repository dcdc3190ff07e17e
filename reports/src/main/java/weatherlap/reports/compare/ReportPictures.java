package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.analysis.choice.Decision;
import weatherlap.analysis.choice.DecisionMaps;
import weatherlap.analysis.choice.PortfolioMap;
import weatherlap.analysis.choice.PortfolioMap.Cell;
import weatherlap.analysis.tables.Segments;
import weatherlap.analysis.words.Compass;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Spread;
import weatherlap.charts.report.ChanceOfMore;
import weatherlap.charts.report.CostRisk;
import weatherlap.charts.report.CostStack;
import weatherlap.charts.report.GlassLost;
import weatherlap.charts.report.HouseTotals;
import weatherlap.charts.report.LeakRose;
import weatherlap.charts.report.PortfolioHeatMap;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.ReportWords;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.Results;
import weatherlap.sim.run.Summary;

/** The pictures of the owner's report, in the order of its argument. */
final class ReportPictures {
    /** Kinds of opening shown beside the whole. */
    private static final int KINDS = 6;

    /** Where the picture of leaks by bearing stands. */
    private static final int AFTER_LOSSES = 3;

    private final Results results;
    private final Decision decision;
    private final Contrast contrast;
    private final Segments segments;
    private final List<LabourStep> steps;
    private final String scope;
    private final String years;
    private final Function<House, Map<Method, double[]>> costUsd;

    /** @param costUsd draws of what a house's job costs the shop, by method */
    ReportPictures(
            Results results,
            Decision decision,
            Segments segments,
            List<LabourStep> steps,
            int horizonYears,
            Function<House, Map<Method, double[]>> costUsd) {
        this.results = results;
        this.decision = decision;
        contrast = decision.cases().contrast();
        this.segments = segments;
        this.steps = steps;
        this.scope = Numbers.count(results.houses().size(), "house", "houses") + ", "
                + Numbers.count(segments.whole().openings(), "opening", "openings");
        this.years = Numbers.count(horizonYears, "year", "years");
        this.costUsd = costUsd;
    }

    /** @param bearings whether the rain knows which way a wall faces; else no picture shows it by bearing */
    List<Figure> all(boolean bearings) {
        String horizon = "houses.csv: horizon_cost_usd_mean, _p10 and _p90";
        List<Figure> figures = new ArrayList<>(List.of(
                Figure.of(glass(), "openings.csv: glass_lost_pct"),
                Figure.of(cost(), "houses.csv: cost_usd_mean, split by what it is spent on"),
                Figure.of(
                        losses(), "houses.csv: price_usd, cost_usd_p10 to cost_usd_p90 of the house named; run by run"),
                Figure.of(costAndRisk(), "houses.csv: price_usd, leak_probability, " + contrast.less()),
                Figure.of(map(), "houses.csv: preferred; elevations.csv: overhang_in"),
                Figure.of(totals(), horizon),
                Figure.of(
                        new LabourPicture(
                                        contrast,
                                        results.houses(),
                                        steps,
                                        segments.whole().openings(),
                                        scope)
                                .picture(),
                        "openings.csv: labour_minutes_mean, step by step; the rows of labour-steps.csv below")));
        if (bearings) {
            figures.add(
                    AFTER_LOSSES, Figure.of(leaks(), "openings.csv: leak_probability; elevations.csv: bearing_deg"));
        }
        return figures;
    }

    private Picture glass() {
        Map<String, List<Pair<OpeningResult>>> kinds = new TreeMap<>();
        List<Pair<OpeningResult>> all = new ArrayList<>();
        for (HouseResult house : results.houses()) {
            for (Map<Method, OpeningResult> methods : house.byOpening()) {
                Pair<OpeningResult> opening = pair(side -> methods.get(side.apply(house.contrast())));
                all.add(opening);
                kinds.computeIfAbsent(kind(opening.second().opening()), k -> new ArrayList<>())
                        .add(opening);
            }
        }
        List<GlassLost.Group> groups = new ArrayList<>();
        groups.add(group("all openings", all));
        kinds.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<String, List<Pair<OpeningResult>>> kind) ->
                        -kind.getValue().size()))
                .limit(KINDS)
                .forEach(kind -> groups.add(group("today " + kind.getKey(), kind.getValue())));
        return new GlassLost(contrast, scope, groups);
    }

    private static String kind(Opening opening) {
        return ReportWords.of(opening.frame().material()) + " " + ReportWords.of(opening.operation());
    }

    private static GlassLost.Group group(String label, List<Pair<OpeningResult>> openings) {
        return new GlassLost.Group(
                label,
                openings.size(),
                new Pair<>(
                        spread(openings.stream().map(Pair::first)),
                        spread(openings.stream().map(Pair::second))));
    }

    private static Spread spread(Stream<OpeningResult> openings) {
        Summary lost = Summary.of(
                openings.mapToDouble(OpeningResult::glassLostFraction).toArray());
        return new Spread(lost.p10(), lost.p50(), lost.p90());
    }

    private Picture cost() {
        Map<String, double[]> parts = new LinkedHashMap<>();
        for (HouseResult house : results.houses()) {
            for (int side = 0; side < 2; side++) {
                int at = side;
                house.method(house.contrast().both().get(side))
                        .costParts()
                        .forEach((name, usd) -> parts.computeIfAbsent(name, key -> new double[2])[at] +=
                                usd / results.houses().size());
            }
        }
        return new CostStack(
                contrast,
                scope + ", means",
                "house",
                parts.entrySet().stream()
                        .map(part ->
                                new CostStack.Part(part.getKey().replace("labour", "labor"), pair(part.getValue())))
                        .toList());
    }

    /** The house whose price, of both methods together, stands in the middle: the report's one typical house. */
    static HouseResult middleByPrice(Results results) {
        return results.houses().stream()
                .sorted(Comparator.comparingDouble(ReportPictures::bothPrices))
                .toList()
                .get((results.houses().size() - 1) / 2);
    }

    /** The odds of losing money on the typical house. */
    private Picture losses() {
        HouseResult typical = middleByPrice(results);
        Map<Method, double[]> costs = costUsd.apply(typical.house());
        return new ChanceOfMore(
                contrast,
                "typical house by price: " + typical.house().label() + ", "
                        + Numbers.count(typical.house().openingCount(), "opening", "openings"),
                "cost of the job to the shop",
                pair(side -> Arrays.stream(costs.get(side.apply(typical.contrast())))
                        .boxed()
                        .toList()),
                Optional.of(pair(
                        side -> typical.method(side.apply(typical.contrast())).priceUsd())));
    }

    private static double bothPrices(HouseResult house) {
        return house.first().priceUsd() + house.second().priceUsd();
    }

    private Picture leaks() {
        double[][] sums = new double[8][3];
        for (HouseResult house : results.houses()) {
            for (Map<Method, OpeningResult> methods : house.byOpening()) {
                OpeningResult first = methods.get(house.contrast().first());
                double[] sum = sums[Compass.octant(first.elevation().bearingDeg())];
                sum[0] += first.leakProbability();
                sum[1] += methods.get(house.contrast().second()).leakProbability();
                sum[2]++;
            }
        }
        List<LeakRose.Ray> rays = new ArrayList<>();
        for (int i = 0; i < sums.length; i++) {
            double[] sum = sums[i];
            if (sum[2] > 0) {
                rays.add(new LeakRose.Ray(
                        45.0 * i, new Pair<>(Math.min(1, sum[0] / sum[2]), Math.min(1, sum[1] / sum[2]))));
            }
        }
        return new LeakRose(contrast, scope, "chance of leak damage at an opening within " + years, rays);
    }

    private Picture costAndRisk() {
        List<Integer> efficient = DecisionMaps.efficient(decision);
        return new CostRisk(
                contrast,
                scope + "; ringed: no other house gains as much safety for as little money",
                "price",
                "chance of leak damage within " + years,
                IntStream.range(0, results.houses().size())
                        .mapToObj(h -> point(results.houses().get(h), efficient.contains(h)))
                        .toList());
    }

    private static CostRisk.House point(HouseResult house, boolean marked) {
        return new CostRisk.House(
                house.house().label(),
                ReportWords.of(house.house().cladding()),
                house.first().priceUsd() - house.second().priceUsd(),
                house.first().leakProbability() - house.second().leakProbability(),
                marked);
    }

    private Picture map() {
        PortfolioMap map = DecisionMaps.storeysAndOverhang(decision);
        List<PortfolioHeatMap.Cell> cells = new ArrayList<>();
        for (int row = 0; row < map.up().size(); row++) {
            for (int column = 0; column < map.across().size(); column++) {
                Cell cell = map.cells().get(row).get(column);
                if (cell.cases() > 0) {
                    cells.add(new PortfolioHeatMap.Cell(column, row, cell.cases(), cell.shareFirst()));
                }
            }
        }
        return new PortfolioHeatMap(
                contrast, scope, "stories", "shortest overhang over a window, in.", map.across(), map.up(), cells);
    }

    private Picture totals() {
        return new HouseTotals(
                contrast,
                scope,
                "cost over " + years,
                results.houses().stream()
                        .map(house -> new HouseTotals.House(house.house().label(), pair(side -> {
                            Summary cost =
                                    house.method(side.apply(house.contrast())).horizonCostUsd();
                            return new Spread(cost.p10(), cost.p50(), cost.p90());
                        })))
                        .toList());
    }

    /** @param of for a side of a contrast, of which each house has its own */
    private static <T> Pair<T> pair(Function<Function<Contrast, Method>, T> of) {
        return new Pair<>(of.apply(Contrast::first), of.apply(Contrast::second));
    }

    static Pair<Double> pair(double[] both) {
        return new Pair<>(both[0], both[1]);
    }
}
