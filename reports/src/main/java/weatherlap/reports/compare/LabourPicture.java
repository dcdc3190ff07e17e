package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.report.LabourBySteps;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.run.HouseResult;

/**
 * What the hours of a portfolio go into, step by step, for both methods.
 *
 * @param contrast the two methods
 * @param openings of all houses
 */
record LabourPicture(Contrast contrast, List<HouseResult> houses, List<LabourStep> steps, int openings, String scope) {
    /** Labour steps shown by name; the rest are one bar. */
    private static final int STEPS = 24;

    /** Steps of one trade name, such as setting the unit, are one bar whichever method's row they are. */
    Picture picture() {
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, double[]> minutes = new LinkedHashMap<>();
        for (LabourStep step : steps) {
            names.put(step.id(), step.tradeName());
            minutes.put(step.tradeName(), new double[2]);
        }
        int each = Math.max(1, openings);
        for (HouseResult house : houses) {
            for (int side = 0; side < 2; side++) {
                int at = side;
                house.method(house.contrast().both().get(side))
                        .labourMinutesByStep()
                        .forEach((step, sum) ->
                                minutes.computeIfAbsent(names.getOrDefault(step, step), key -> new double[2])[at] +=
                                        sum / each);
            }
        }
        return of(scope + ", means of an opening, shared work spread over them", minutes);
    }

    /** The largest steps in table order, then the others as one. */
    private Picture of(String scope, Map<String, double[]> minutes) {
        List<String> shown = minutes.keySet().stream()
                .filter(name -> size(minutes.get(name)) > 0)
                .sorted(Comparator.comparingDouble((String name) -> -size(minutes.get(name))))
                .limit(STEPS)
                .toList();
        List<LabourBySteps.Step> bars = new ArrayList<>();
        double[] rest = new double[2];
        minutes.forEach((name, both) -> {
            if (shown.contains(name)) {
                bars.add(new LabourBySteps.Step(name, ReportPictures.pair(both)));
            } else {
                rest[0] += both[0];
                rest[1] += both[1];
            }
        });
        return new LabourBySteps(
                contrast,
                scope,
                bars,
                Optional.of(new LabourBySteps.Step("all other steps", ReportPictures.pair(rest)))
                        .filter(others -> size(rest) > 0));
    }

    private static double size(double[] both) {
        return Math.max(both[0], both[1]);
    }
}
