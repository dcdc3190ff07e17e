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
 * @param rows by outcome, tables first, then single rows, each from the widest swing to the narrowest
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

    /** Runs the study. */
    public static DriverStudy of(Assumptions base, Differences.Model houses, Effort effort) {
        List<Factor> factors = Factors.ranged(base);
        RangedModel model = new RangedModel(base, factors, houses);
        List<FactorGroup> tables = tables(factors);
        List<FactorGroup> single =
                FactorGroup.singly(factors.stream().map(Factor::name).toList());
        List<List<Swing>> tableSwings = Swing.of(model, factors.size(), tables, TAIL);
        List<List<Swing>> swings = Swing.of(model, factors.size(), single, TAIL);
        List<FactorGroup> asked = new ArrayList<>(tables);
        widest(swings, effort.singly()).forEach(f -> asked.add(single.get(f)));
        List<SobolIndices> indices = SobolIndices.estimateEach(
                r -> model.part(r, effort.design().replicates()), factors.size(), asked, effort.design());
        InformationStudy information = InformationStudy.of(
                model, effort.informationPoints(), effort.design().streams());
        List<DriverRow> rows = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            int o = outcome.ordinal();
            rows.addAll(rows(tableSwings.get(o), true, outcome, indices.get(o), information));
            rows.addAll(rows(swings.get(o), false, outcome, indices.get(o), information));
        }
        return new DriverStudy(factors, rows, middle(model), indices, information, effort);
    }

    /** How often a study runs the model. */
    public static int runs(Assumptions base, Effort effort) {
        List<Factor> factors = Factors.ranged(base);
        int tables = tables(factors).size();
        int asked = tables + Math.min(effort.singly(), factors.size());
        return 2 * (tables + factors.size())
                + effort.design().points() * effort.design().replicates() * (asked + 2)
                + effort.informationPoints()
                + 1;
    }

    private static List<Double> middle(RangedModel model) {
        double[] medians = new double[model.factors().size()];
        Arrays.fill(medians, 0.5);
        return Arrays.stream(model.outcomes(new double[][] {medians}))
                .map(outcome -> outcome[0])
                .toList();
    }

    private static List<DriverRow> rows(
            List<Swing> swings, boolean group, Outcome outcome, SobolIndices indices, InformationStudy information) {
        return IntStream.range(0, swings.size())
                .mapToObj(i -> new DriverRow(
                        swings.get(i).group(),
                        group,
                        outcome,
                        index(indices, swings.get(i).group()),
                        swings.get(i),
                        group || outcome != Outcome.COST_DIFFERENCE
                                ? Optional.empty()
                                : Optional.of(information.worths().get(i))))
                .sorted(Comparator.comparingDouble(
                        (DriverRow row) -> -row.swing().width()))
                .toList();
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
