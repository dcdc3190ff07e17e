package weatherlap.analysis.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Test;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;

/** Portfolios made so that the right rule is known. */
class RuleStudyTest {
    private static final Streams STREAMS = new Streams(5);
    private static final List<String> BARRIERS = List.of("housewrap", "building_paper", "none", "unknown");

    private final int size = 400;
    private final List<Double> overhangs = numbers("overhang", 0, 24);
    private final List<Double> storeys =
            numbers("storeys", 1, 3).stream().map(Math::rint).toList();
    private final List<String> barriers = numbers("barrier", 0, 3.999).stream()
            .map(v -> BARRIERS.get((int) (double) v))
            .toList();
    private final List<AskedFact> facts = List.of(
            AskedFact.Number.byStep("storeys", "Has the house under %s stories?"::formatted, storeys, 1),
            AskedFact.Number.byStep("overhang", "Is the overhang under %s in.?"::formatted, overhangs, 4),
            new AskedFact.Word("barrier", "Is the barrier %s?"::formatted, barriers));

    @Test
    void findsTheRuleThatMadeTheCosts() {
        // Full flange, 500 USD cheaper, under a short eave and on bare sheathing; insert, 300 USD cheaper, elsewhere.
        IntPredicate right = c -> overhangs.get(c) < 8 || barriers.get(c).equals("none");
        RuleStudy study = RuleStudy.of(cases(right, 0), 10, STREAMS);

        assertThat(study.rule().questions()).isEqualTo(2);
        assertThat(study.choiceInWords()).containsPattern("asking two questions costs|more than asking two questions");
        assertThat(String.join(" ", study.rule().lines()))
                .contains("Is the overhang under 8 in.?", "Is the barrier none?");
        assertChooses(study.rule(), right);
        RuleScore rule = score(study, "rule");
        assertThat(rule.regretUsd()).isZero();
        assertThat(rule.heldOutRegretUsd()).isZero();
        assertThat(rule.shareNotBest()).isZero();
        assertThat(rule.staysBestProbability()).isEqualTo(1);
        assertThat(score(study, "always_insert").staysBestProbability()).isZero();
    }

    @Test
    void findsItUnderNoiseAndWillNotPayForAThirdQuestion() {
        IntPredicate right = c -> overhangs.get(c) < 8 || barriers.get(c).equals("none");
        RuleStudy study = RuleStudy.of(cases(right, 600), 10, STREAMS);

        assertChooses(study.rule(), right);
        assertThat(study.rule().questions()).isEqualTo(2);
        assertThat(score(study, "rule").heldOutRegretUsd())
                .isGreaterThan(score(study, "rule").regretUsd() - 1e-9)
                .isLessThan(score(study, "always_insert").regretUsd());
    }

    @Test
    void findsATreeWithAQuestionOnEitherSide() {
        IntPredicate right = c ->
                storeys.get(c) < 2 ? overhangs.get(c) < 4 : !barriers.get(c).equals("housewrap");
        RuleStudy study = RuleStudy.of(cases(right, 0), 5, STREAMS);
        assertThat(study.rule().lines())
                .containsExactly(
                        "1. Has the house under 2 stories? Yes: question 2. No: question 3.",
                        "2. Is the overhang under 4 in.? Yes: full-flange. No: insert.",
                        "3. Is the barrier housewrap? Yes: insert. No: full-flange.");
    }

    @Test
    void asksNothingWhereTheFactsSayNothing() {
        double[] noise = normal("noise alone");
        RuleStudy study = RuleStudy.of(
                Cases.apart(Contrast.USUAL, facts, new double[size], column(c -> 100 + 300 * noise[c])), 10, STREAMS);
        assertThat(study.rule()).isEqualTo(new Rule.Always(Method.INSERT));
        assertThat(study.rule().lines()).containsExactly("Always insert.");
        assertThat(score(study, "rule").regretUsd())
                .isEqualTo(score(study, "always_insert").regretUsd());
        assertThat(study.choiceInWords()).contains("asking nothing");
    }

    @Test
    void aLongerRuleThatOnlyFitsItsOwnHousesIsToldWithWhatItWouldCost() {
        double[] noise = normal("noise alone");
        RuleStudy study = RuleStudy.of(
                Cases.apart(Contrast.USUAL, facts, new double[size], column(c -> 100 + 300 * noise[c])), 10, STREAMS);
        assertThat(study.runnerUpInWords().orElseThrow())
                .startsWith("By asking ")
                .contains("On other houses it costs");
        IntPredicate right = c -> overhangs.get(c) < 8;
        assertThat(RuleStudy.of(cases(right, 0), 10, STREAMS).runnerUpInWords()).isEmpty();
    }

    @Test
    void scoresByHand() {
        // Three houses, two draws. d = −20, 50, 10 on average; insert 100, 200, 300.
        double[][] differences = {{-30, -10}, {100, 0}, {-80, 100}};
        AskedFact one = new AskedFact.Word("mark", "Is it %s?"::formatted, List.of("a", "b", "b"));
        Cases cases = Cases.apart(Contrast.USUAL, List.of(one), new double[] {100, 200, 300}, differences);
        RuleStudy.Length length = new RuleStudy.Length(
                1,
                new Rule.Ask(
                        Question.on(List.of(one)).get(0),
                        new Rule.Always(Method.FULL_FLANGE),
                        new Rule.Always(Method.INSERT)),
                0,
                7,
                0,
                0);
        List<RuleScore> table = RuleScore.table(cases, length);

        // Draw sums against insert everywhere: flange −10, 90; rule −30, −10. Best choice as the rule.
        assertThat(table)
                .containsExactly(
                        new RuleScore("always_full_flange", "Always full-flange.", 640 / 3.0, 20, 20, 1, 2 / 3.0, 0),
                        new RuleScore("always_insert", "Always insert.", 200, 20 / 3.0, 20 / 3.0, 0, 1 / 3.0, 0),
                        new RuleScore(
                                "rule", "1. Is it a? Yes: full-flange. No: insert.", 580 / 3.0, 0, 7, 1 / 3.0, 0, 1),
                        new RuleScore(
                                "best_choice",
                                "Whichever costs the house less; the rule where both cost the same.",
                                580 / 3.0,
                                0,
                                0,
                                1 / 3.0,
                                0,
                                1));
    }

    /** A house to which limits leave one plan does not speak against the rule. */
    @Test
    void theBestChoiceDepartsFromTheRuleOnlyWhereThatPays() {
        AskedFact one = new AskedFact.Word("mark", "Is it %s?"::formatted, List.of("a", "b", "b"));
        Cases cases = Cases.apart(
                Contrast.USUAL, List.of(one), new double[] {100, 200, 300}, new double[][] {{0, 0}, {-5, -7}, {4, 6}});
        RuleStudy.Length always = new RuleStudy.Length(0, new Rule.Always(Method.FULL_FLANGE), 0, 0, 0, 0);
        assertThat(RuleScore.table(cases, always))
                .filteredOn(score -> score.name().equals("best_choice"))
                .singleElement()
                .satisfies(score -> {
                    assertThat(score.shareFirst()).isEqualTo(2 / 3.0);
                    assertThat(score.regretUsd()).isZero();
                });
    }

    @Test
    void searchAgreesWithEveryTreeTriedOneByOne() {
        UniformRandomProvider stream = STREAMS.world("small portfolios");
        for (int trial = 0; trial < 20; trial++) {
            List<Question> questions = new ArrayList<>();
            for (int q = 0; q < 5; q++) {
                BitSet yes = new BitSet();
                for (int c = 0; c < 12; c++) {
                    yes.set(c, stream.nextBoolean());
                }
                questions.add(new Question("question " + q + "?", yes));
            }
            double[] differences = new double[12];
            Arrays.setAll(differences, c -> stream.nextDouble() - 0.5);
            Sums sums = Sums.of(questions, differences, c -> true);
            for (int most = 0; most <= 3; most++) {
                Rule found = RuleSearch.best(Contrast.USUAL, questions, sums, most, 12);
                assertThat(found.questions()).isLessThanOrEqualTo(most);
                double least = trees(questions, most).stream()
                        .mapToDouble(tree -> cost(tree, differences))
                        .min()
                        .orElseThrow();
                assertThat(cost(found, differences)).isCloseTo(least, within(1e-12));
            }
        }
    }

    @Test
    void casesOfOneBlockAreHeldOutTogether() {
        int[] blocks = {3, 3, 8, 8, 8, 1, 5, 5};
        int[] folds = CrossValidation.folds(blocks, 2, STREAMS.world("deal"));
        assertThat(folds[0]).isEqualTo(folds[1]);
        assertThat(folds[2]).isEqualTo(folds[3]).isEqualTo(folds[4]);
        assertThat(folds[6]).isEqualTo(folds[7]);
        assertThat(Arrays.stream(new int[] {folds[0], folds[2], folds[5], folds[6]})
                        .sum())
                .isEqualTo(2);
    }

    @Test
    void refusesFactsThatDoNotCoverTheCases() {
        assertThatThrownBy(() -> Cases.apart(Contrast.USUAL, facts, new double[3], new double[3][1]))
                .hasMessageContaining("storeys (400)");
    }

    /** Every tree of at most so many questions, the methods at its ends in all ways. */
    private static List<Rule> trees(List<Question> questions, int most) {
        List<Rule> trees =
                new ArrayList<>(List.of(new Rule.Always(Method.FULL_FLANGE), new Rule.Always(Method.INSERT)));
        for (int onYes = 0; onYes < most; onYes++) {
            List<Rule> yes = exactly(trees(questions, onYes), onYes);
            List<Rule> no = trees(questions, most - 1 - onYes);
            for (Question question : questions) {
                yes.forEach(y -> no.forEach(n -> trees.add(new Rule.Ask(question, y, n))));
            }
        }
        return trees;
    }

    private static List<Rule> exactly(List<Rule> rules, int count) {
        return rules.stream().filter(r -> r.questions() == count).toList();
    }

    private static double cost(Rule rule, double[] differences) {
        double sum = 0;
        for (int c = 0; c < differences.length; c++) {
            sum += rule.method(c) == Method.FULL_FLANGE ? differences[c] : 0;
        }
        return sum;
    }

    private Cases cases(IntPredicate flange, double noiseUsd) {
        double[] noise = normal("noise");
        return Cases.apart(
                Contrast.USUAL,
                facts,
                new double[size],
                column(c -> (flange.test(c) ? -500 : 300) + noiseUsd * noise[c]));
    }

    private double[][] column(java.util.function.IntToDoubleFunction difference) {
        double[][] rows = new double[size][];
        Arrays.setAll(rows, c -> new double[] {difference.applyAsDouble(c)});
        return rows;
    }

    private void assertChooses(Rule rule, IntPredicate flange) {
        for (int c = 0; c < size; c++) {
            assertThat(rule.method(c)).isEqualTo(flange.test(c) ? Method.FULL_FLANGE : Method.INSERT);
        }
    }

    private static RuleScore score(RuleStudy study, String name) {
        return study.scores().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private double[] normal(String purpose) {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        double[] draws = Sampling.PLAIN.uniforms(size, STREAMS.world(purpose));
        Arrays.setAll(draws, c -> normal.inverseCumulativeProbability(draws[c]));
        return draws;
    }

    private List<Double> numbers(String purpose, double low, double high) {
        return Arrays.stream(Sampling.PLAIN.uniforms(size, STREAMS.world(purpose)))
                .map(u -> low + (high - low) * u)
                .boxed()
                .toList();
    }

    /** Where a longer rule may be had but turns out the same, nothing is gained over it. */
    @Test
    void aRuleIsNotSetAgainstItself() {
        Rule insert = new Rule.Always(Method.INSERT);
        RuleStudy study = new RuleStudy(
                insert,
                List.of(new RuleStudy.Length(0, insert, 40, 52, 2, 3), new RuleStudy.Length(1, insert, 40, 50, 0, 0)),
                List.of(),
                5);
        assertThat(study.choiceInWords())
                .startsWith(
                        "On houses that the rule was not made from, no longer rule does" + " better: asking nothing");
    }
}
