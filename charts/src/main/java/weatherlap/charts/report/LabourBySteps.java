package weatherlap.charts.report;

import java.awt.Graphics2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.Picture;
import weatherlap.sim.Check;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * Labour by step for both methods.
 *
 * @param contrast the two methods
 * @param scope what is counted, for the line under the title
 * @param steps in the order of the work
 * @param others the steps that are not shown one by one, together; the last bar
 */
public record LabourBySteps(Contrast contrast, String scope, List<Step> steps, Optional<Step> others)
        implements Picture {

    /**
     * A step of the work.
     *
     * @param label its trade name
     * @param minutes person-minutes for one window, 0 where the method does without
     */
    public record Step(String label, Pair<Double> minutes) {
        public Step {
            Check.text("label", label);
            Check.notNegative("first minutes", minutes.first());
            Check.notNegative("second minutes", minutes.second());
        }
    }

    /** With every step shown. */
    public LabourBySteps(Contrast contrast, String scope, List<Step> steps) {
        this(contrast, scope, steps, Optional.empty());
    }

    public LabourBySteps {
        steps = List.copyOf(steps);
    }

    @Override
    public String name() {
        return "labour-by-step";
    }

    @Override
    public String title() {
        return "Where the labor goes";
    }

    @Override
    public int heightPx() {
        return Frame.HEAD_PX + 36 * Math.max(2, bars().size()) + 44;
    }

    @Override
    public String message() {
        if (steps.isEmpty()) {
            return "There are no labor steps to show.";
        }
        return "A window takes " + both(method -> minutes(total(method)) + " person-minutes")
                + ". The longest steps are " + both(this::longest) + ".";
    }

    private String both(Function<Method, String> amount) {
        return contrast.both().stream()
                .map(method -> amount.apply(method) + " with " + method.inSentence())
                .collect(Collectors.joining(" and "));
    }

    private List<Step> bars() {
        return Stream.concat(steps.stream(), others.stream()).toList();
    }

    private double total(Method method) {
        return bars().stream().mapToDouble(minutesOf(method)).sum();
    }

    private ToDoubleFunction<Step> minutesOf(Method method) {
        return step -> step.minutes().of(contrast, method);
    }

    private String longest(Method method) {
        Step step = steps.stream()
                .max(Comparator.comparingDouble(minutesOf(method)))
                .orElseThrow();
        return Lettering.clean(step.label()) + " (" + minutes(step.minutes().of(contrast, method)) + ")";
    }

    private static String minutes(double value) {
        return Numbers.plain(value, 0);
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (steps.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        List<PairRows.Amounts> rows = bars().stream()
                .map(step -> new PairRows.Amounts(step.label(), step.minutes()))
                .toList();
        Frame.body(g, this, PairRows.bars(contrast, rows, axis(), v -> v > 0 ? minutes(v) : "\u2013"));
    }

    NumberAxis axis() {
        return Axes.value(
                "person-minutes per window",
                Axes.Format.PLAIN,
                true,
                bars().stream()
                        .flatMapToDouble(step -> DoubleStream.of(
                                step.minutes().first(), step.minutes().second())));
    }
}
