package weatherlap.analysis.drivers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import weatherlap.analysis.sensitivity.CubeModel;
import weatherlap.analysis.sensitivity.FactorGroup;
import weatherlap.analysis.sensitivity.SobolIndices;
import weatherlap.analysis.sensitivity.SobolIndices.Design;
import weatherlap.analysis.sensitivity.SobolIndices.Index;
import weatherlap.analysis.sensitivity.Swing;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Assumptions;

/**
 * What drives the answer.
 *
 * @param factors all rows with a range
 * @param rows by outcome, tables first, then groups of rows, choices and single rows, each from the widest swing to the narrowest
 * @param middle by outcome, with every row at its median
 * @param indices by outcome, with mean and variance
 * @param information worth of knowing single rows, by the order of the factors
 * @param effort what was run
 */
public record DriverStudy(
        List<Factor> factors,
        List<DriverRow> rows,
        List<Double> middle,
        List<SobolIndices> indices,
        InformationStudy information,
        Effort effort) {
    /** Share of a distribution below the low point of a swing and above the high one. */
    public static final double TAIL = 0.1;

    private static final Comparator<DriverRow> WIDEST_FIRST =
            Comparator.comparingDouble(row -> -row.swing().width());

    public DriverStudy {
        factors = List.copyOf(factors);
        rows = List.copyOf(rows);
        middle = List.copyOf(middle);
        indices = List.copyOf(indices);
    }

    /**
     * How much to run.
     *
     * @param design of the Sobol' indices
     * @param singly rows with the widest swings, of either outcome, that get indices by themselves
     * @param informationPoints points for the worth of information
     */
    public record Effort(Design design, int singly, int informationPoints) {
        public Effort {
            Check.within("rows asked about singly", singly, 0, 400);
            Check.within("points for information", informationPoints, 50, 1_000_000);
        }
    }

    /**
     * Runs the study.
     *
     * @param dealt houses for the indices, one each sequence, in turn
     * @param swung houses for swings and worths, all of which see every point
     */
    public static DriverStudy of(Assumptions base, Houses dealt, Houses swung, Effort effort) {
        List<Factor> factors = Factors.ranged(base);
        List<FactorGroup> tables = tables(factors);
        List<FactorGroup> single =
                FactorGroup.singly(factors.stream().map(Factor::name).toList());
        CubeModel mean = points -> mean(eachHouse(base, factors, swung, points));
        List<List<Swing>> tableSwings = Swing.of(mean, factors.size(), tables, TAIL);
        List<List<Swing>> swings = Swing.of(mean, factors.size(), single, TAIL);
        List<FactorGroup> groups = groups(base, factors);
        List<List<Swing>> groupSwings = Swing.of(mean, factors.size(), groups, TAIL);
        List<FactorGroup> asked = new ArrayList<>(tables);
        widest(swings, effort.singly()).forEach(f -> asked.add(single.get(f)));
        List<SobolIndices> indices = SobolIndices.estimateEach(
                r -> model(base, factors, dealt, r % dealt.count()), factors.size(), asked, effort.design());
        InformationStudy information = InformationStudy.of(
                factors,
                points -> Arrays.stream(eachHouse(base, factors, swung, points))
                        .map(outcomes -> outcomes[Outcome.COST_DIFFERENCE.ordinal()])
                        .toArray(double[][]::new),
                effort.informationPoints(),
                effort.design().streams());
        List<ChoiceSwing> choices = ChoiceSwing.of(base, factors, swung);
        List<DriverRow> rows = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            int o = outcome.ordinal();
            rows.addAll(ofGroups(tableSwings.get(o), outcome, indices.get(o)));
            rows.addAll(ofGroups(groupSwings.get(o), outcome, indices.get(o)));
            rows.addAll(choices.stream().map(choice -> choice.row(outcome)).toList());
            rows.addAll(ofFactors(factors, swings.get(o), outcome, indices.get(o), information));
        }
        return new DriverStudy(factors, rows, middle(mean, factors.size()), indices, information, effort);
    }

    /** How often a study asks a house. */
    public static int runs(Assumptions base, Houses swung, Effort effort) {
        List<Factor> factors = Factors.ranged(base);
        int tables = tables(factors).size();
        int asked = tables + Math.min(effort.singly(), factors.size());
        return effort.design().points() * effort.design().replicates() * (asked + 2)
                + swung.count()
                        * (2 * (tables + groups(base, factors).size() + factors.size())
                                + ChoiceSwing.words(base)
                                + effort.informationPoints()
                                + 1);
    }

    static RangedModel model(Assumptions base, List<Factor> factors, Houses houses, int position) {
        return new RangedModel(new RangedAssumptions(base, factors), houses.house(position, base));
    }

    /** Outcomes at some points, [house][outcome][point]; houses are worked out side by side. */
    private static double[][][] eachHouse(Assumptions base, List<Factor> factors, Houses houses, double[][] points) {
        return IntStream.range(0, houses.count())
                .parallel()
                .mapToObj(h -> model(base, factors, houses, h).outcomes(points))
                .toArray(double[][][]::new);
    }

    private static double[][] mean(double[][][] houses) {
        double[][] mean = new double[houses[0].length][houses[0][0].length];
        for (double[][] house : houses) {
            for (int o = 0; o < mean.length; o++) {
                for (int i = 0; i < mean[o].length; i++) {
                    mean[o][i] += house[o][i] / houses.length;
                }
            }
        }
        return mean;
    }

    private static List<Double> middle(CubeModel mean, int factors) {
        double[] medians = new double[factors];
        Arrays.fill(medians, 0.5);
        return Arrays.stream(mean.outcomes(new double[][] {medians}))
                .map(outcome -> outcome[0])
                .toList();
    }

    private static List<DriverRow> ofGroups(List<Swing> swings, Outcome outcome, SobolIndices indices) {
        return swings.stream()
                .map(swing -> new DriverRow(
                        swing.group(), true, outcome, index(indices, swing.group()), swing, "", "", Optional.empty()))
                .sorted(WIDEST_FIRST)
                .toList();
    }

    private static List<DriverRow> ofFactors(
            List<Factor> factors,
            List<Swing> swings,
            Outcome outcome,
            SobolIndices indices,
            InformationStudy information) {
        return IntStream.range(0, swings.size())
                .mapToObj(f -> new DriverRow(
                        factors.get(f).name(),
                        false,
                        outcome,
                        index(indices, factors.get(f).name()),
                        swings.get(f),
                        shown(factors.get(f), TAIL),
                        shown(factors.get(f), 1 - TAIL),
                        outcome == Outcome.COST_DIFFERENCE
                                ? Optional.of(information.worths().get(f))
                                : Optional.empty()))
                .sorted(WIDEST_FIRST)
                .toList();
    }

    private static String shown(Factor factor, double uniform) {
        return factor.shown(RangedAssumptions.value(factor, uniform));
    }

    private static Optional<Index> index(SobolIndices indices, String group) {
        return indices.indices().stream().filter(i -> i.group().equals(group)).findFirst();
    }

    /** Factors by the table they stand in. */
    private static List<FactorGroup> tables(List<Factor> factors) {
        Map<String, List<Integer>> tables = new LinkedHashMap<>();
        for (int f = 0; f < factors.size(); f++) {
            tables.computeIfAbsent(factors.get(f).table(), t -> new ArrayList<>())
                    .add(f);
        }
        return tables.entrySet().stream()
                .map(e -> new FactorGroup(e.getKey(), e.getValue()))
                .toList();
    }

    /** Ranged rows of a group that is not a whole table; such groups as have more than one. */
    private static List<FactorGroup> groups(Assumptions base, List<Factor> factors) {
        List<String> names = factors.stream().map(Factor::name).toList();
        return RateGroup.all(base).stream()
                .filter(group -> !group.name().endsWith("/all"))
                .map(group -> new FactorGroup(
                        group.name(),
                        group.rows().stream()
                                .map(names::indexOf)
                                .filter(f -> f >= 0)
                                .toList()))
                .filter(group -> group.factors().size() > 1)
                .toList();
    }

    /** Factors with the widest swings, taken from the outcomes in turn, until there are so many; none twice. */
    private static Set<Integer> widest(List<List<Swing>> swings, int count) {
        List<List<Integer>> orders = swings.stream()
                .map(outcome -> IntStream.range(0, outcome.size())
                        .boxed()
                        .sorted(Comparator.comparingDouble(f -> -outcome.get(f).width()))
                        .toList())
                .toList();
        Set<Integer> widest = new LinkedHashSet<>();
        for (int rank = 0; rank < swings.get(0).size(); rank++) {
            for (List<Integer> order : orders) {
                if (widest.size() < count) {
                    widest.add(order.get(rank));
                }
            }
        }
        return widest;
    }
}
