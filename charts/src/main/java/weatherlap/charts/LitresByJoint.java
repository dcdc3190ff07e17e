package weatherlap.charts;

import java.awt.Graphics2D;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import weatherlap.sim.Check;

/**
 * Water that gets past the first line in a year, joint by joint, for both methods.
 *
 * @param scope what is counted, for the line under the title
 * @param joints head, jamb, sill, …
 */
public record LitresByJoint(String scope, List<Joint> joints) implements Picture {

    /** A joint and the litres a year that pass it with each method. */
    public record Joint(String label, Pair<Double> litresPerYear) {
        public Joint {
            Check.text("label", label);
            Check.notNegative("full-flange litres", litresPerYear.fullFlange());
            Check.notNegative("insert litres", litresPerYear.insert());
        }
    }

    public LitresByJoint {
        joints = List.copyOf(joints);
    }

    @Override
    public String name() {
        return "litres-by-joint";
    }

    @Override
    public String title() {
        return "Where the water gets in";
    }

    @Override
    public int heightPx() {
        return Frame.HEAD_PX + 40 * Math.max(2, joints.size()) + 44;
    }

    @Override
    public String message() {
        if (joints.isEmpty()) {
            return "There are no joints to show.";
        }
        return "Past the first line get " + litres(total(MethodStyle.FULL_FLANGE)) + " L a year with full-flange and "
                + litres(total(MethodStyle.INSERT)) + " L with an insert; most of it at the "
                + worst(MethodStyle.FULL_FLANGE) + " and at the " + worst(MethodStyle.INSERT) + ", respectively.";
    }

    private double total(MethodStyle method) {
        return joints.stream().mapToDouble(j -> j.litresPerYear().of(method)).sum();
    }

    private String worst(MethodStyle method) {
        Joint joint = joints.stream()
                .max(Comparator.comparingDouble(j -> j.litresPerYear().of(method)))
                .orElseThrow();
        return Words.clean(joint.label()) + " (" + litres(joint.litresPerYear().of(method)) + ")";
    }

    /** Two significant figures where there is less than ten. */
    private static String litres(double value) {
        int decimals = value >= 10 || value == 0 ? 0 : value >= 1 ? 1 : value >= 0.1 ? 2 : 3;
        return Numbers.plain(value, decimals);
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (joints.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        List<PairRows.Amounts> rows = joints.stream()
                .map(joint -> new PairRows.Amounts(joint.label(), joint.litresPerYear()))
                .toList();
        Frame.body(g, this, PairRows.bars(rows, axis(), LitresByJoint::litres));
    }

    NumberAxis axis() {
        return Axes.value(
                "water past the first line, L a year",
                Axes.Format.PLAIN,
                true,
                joints.stream()
                        .flatMapToDouble(j -> DoubleStream.of(
                                j.litresPerYear().fullFlange(),
                                j.litresPerYear().insert())));
    }
}
