package weatherlap.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.MadeHouses.Terms;
import weatherlap.analysis.plan.PlanReason.Why;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Way;
import weatherlap.sim.run.SimulatedHouse;

/** Reasons worked out by hand: a wall of two windows, a panel of siding at 50 USD, no set-up. All invented. */
class PlanReasonsTest {
    private static final SimulatedHouse MADE = house(FrameCondition.SOUND);
    private static final int SETS = 1 << Method.values().length;

    @Test
    void aClosedMethodLeavesOne() {
        PlanReason reason = of(parts(new Terms(0, 0), opening(1300, 900, "no_unit_fits"), opening(900, 1000)), 1)
                .get(0);
        assertThat(reason.why()).isEqualTo(Why.ONLY_ONE);
        assertThat(reason.closed()).containsEntry(Method.INSERT, Set.of(Limit.NO_UNIT_FITS));
        assertThat(reason.swap()).isEmpty();
        assertThat(ReasonWords.of(reason))
                .isEqualTo("Only full-flange will do here: the insert is out, no unit fits the opening.");
    }

    @Test
    void aRottenFrameIsNamed() {
        SimulatedHouse house = house(FrameCondition.ROTTEN);
        PlanReason reason =
                PlanReasons.of(house.parts(), HouseChoice.of(house, 1), 1).get(0);
        assertThat(ReasonWords.of(reason))
                .isEqualTo("Only full-flange will do here: the insert is out, a rotten frame cannot keep an insert.");
    }

    /** The insert at the second window saves its one own panel; the three it shares stay down: 1000 − (900 + 50). */
    @Test
    void theSidingIsDownAnyway() {
        PlanReason reason = of(parts(new Terms(0, 0), opening(1300, 900, "no_unit_fits"), opening(900, 1000)), 1)
                .get(1);
        assertThat(reason.why()).isEqualTo(Why.SHARES_SIDING);
        assertThat(reason.swap().orElseThrow().moreUsd()).isCloseTo(50, within(1e-9));
        assertThat(reason.sidingUsd()).isCloseTo(150, within(1e-9));
        assertThat(ReasonWords.of(reason))
                .isEqualTo("Shares the siding that is down anyway: costs $50 less over the years than the insert.");
    }

    /** Alone it would take down four panels and still cost less: 1200 against 900 + 200. */
    @Test
    void whatIsCheaperWithAllItsSidingIsCheaper() {
        PlanReason reason = of(parts(new Terms(0, 0), opening(1300, 900, "no_unit_fits"), opening(900, 1200)), 1)
                .get(1);
        assertThat(reason.why()).isEqualTo(Why.CHEAPER);
        assertThat(ReasonWords.of(reason)).isEqualTo("Costs $250 less over the years than the insert.");
    }

    /** The insert would cost 900 + 4 · 50 − 800 less and leak in 30 of 100 draws. */
    @Test
    void theLimitIsKept() {
        PlanReason reason = of(parts(new Terms(30, 0), opening(900, 800)), 0.2).get(0);
        assertThat(reason.why()).isEqualTo(Why.KEEPS_LIMIT);
        assertThat(reason.swap().orElseThrow().moreUsd()).isCloseTo(-300, within(1e-9));
        assertThat(ReasonWords.of(reason))
                .isEqualTo(
                        "Keeps the leak chance of the house within 20%; the insert here would save $300 over the years"
                                + " but take it to 30%.");
        assertThat(ReasonWords.ranked(List.of(reason)))
                .isEqualTo(
                        "Keeps the leak risk of the house within what was taken for acceptable; the insert here would save"
                                + " $300 over the years but take it above that.");
    }

    @Test
    void whereNoPlanKeepsTheLimitTheLeastRiskIsTheReason() {
        PlanReason reason =
                of(parts(new Terms(10.2, 0), opening(900, 1300)), 0.05).get(0);
        assertThat(reason.why()).isEqualTo(Why.LEAST_RISK);
        assertThat(ReasonWords.of(reason))
                .isEqualTo(
                        "Keeps the leak chance of the house lowest, at 10%; the insert here would take it just above 10%.");
    }

    /** What reads alike but for its numbers is said once. */
    @Test
    void likeReasonsAreToldTogether() {
        List<PlanReason> reasons =
                of(parts(new Terms(0, 0), opening(900, 1300), opening(900, 1500), opening(1300, 900)), 1);
        assertThat(ReasonWords.alike(reasons).stream().map(ReasonWords::of))
                .containsExactly(
                        "Costs between $350 and $550 less over the years than the insert.",
                        "Costs $450 less over the years than full-flange.");
    }

    /** A plan that a search was cut off at does not claim to be cheaper. */
    @Test
    void aBetterPlanThatWasNotFoundIsNotDenied() {
        PlanParts parts = parts(new Terms(0, 0), opening(900, 800));
        HouseChoice choice = choice(parts, 1, PlanCost.plan(parts, List.of(Method.FULL_FLANGE), 400));
        PlanReason reason = PlanReasons.of(parts, choice, 1).get(0);
        assertThat(reason.why()).isEqualTo(Why.BEST_FOUND);
        assertThat(ReasonWords.of(reason)).isEqualTo("Part of the best plan that we found.");
    }

    /** Of two independent windows at 10 of 100 each, one draw: 19 of 100. */
    @Test
    void theChanceOfAPlanIsThatOfItsDraws() {
        PlanParts parts = parts(new Terms(30, 0), opening(900, 1300), opening(900, 1300));
        Plan plan = PlanCost.plan(parts, List.of(Method.FULL_FLANGE, Method.FULL_FLANGE), 0);
        assertThat(PlanReasons.leakScore(parts, plan).mean()).isCloseTo(19, within(1e-9));
        assertThat(plan.leakProbability()).isCloseTo(0.19, within(1e-9));
    }

    private static List<PlanReason> of(PlanParts parts, double riskLimit) {
        List<OpenMethods> open = parts.openings().stream().map(OpenMethods::of).toList();
        return PlanReasons.of(parts, choice(parts, riskLimit, new PlanSearch(parts, open).best(riskLimit)), riskLimit);
    }

    private static HouseChoice choice(PlanParts parts, double riskLimit, Plan family) {
        return new HouseChoice(
                MADE.result(),
                parts.openings().stream()
                        .map(OpenMethods::of)
                        .map(OpenMethods::closed)
                        .toList(),
                new EnumMap<>(Method.class),
                Set.of(),
                family,
                Method.INSERT,
                family.leakProbability() > riskLimit,
                new double[0]);
    }

    private static SimulatedHouse house(FrameCondition frame) {
        return MadeHouses.house(
                "h", new Terms(10, 300), new Terms(30, 500), new MadeHouses.Wall(0, 1300, 900, frame, List.of()));
    }

    private record Costs(double flangeUsd, double insertUsd, List<String> flags) {}

    private static Costs opening(double flangeUsd, double insertUsd, String... flags) {
        return new Costs(flangeUsd, insertUsd, List.of(flags));
    }

    /** Each window takes down four panels, three of them those of the one before; the full flange leaks in 10 of 100 where inserts leak. */
    private static PlanParts parts(Terms insert, Costs... openings) {
        Elevation wall = MADE.result().house().elevations().get(0);
        double[] perPanel = new double[SETS];
        for (int set = 0; set < SETS; set++) {
            perPanel[set] = (set >> Method.FULL_FLANGE.ordinal() & 1) == 1 ? 50 : 0;
        }
        double flange = insert.leakPercent() > 0 ? 10 : 0;
        List<Part> parts = new ArrayList<>();
        for (Costs costs : openings) {
            BitSet panels = new BitSet();
            panels.set(parts.size(), parts.size() + 4);
            parts.add(new Part(
                    wall.openings().get(0),
                    panels,
                    List.of(
                            way(Method.FULL_FLANGE, costs.flangeUsd, flange, List.of()),
                            way(Method.INSERT, costs.insertUsd, insert.leakPercent(), costs.flags))));
        }
        return new PlanParts(
                MADE.result().house(),
                List.of(new PlanParts.Wall(wall, new double[SETS], perPanel, parts)),
                new double[SETS],
                new double[] {1});
    }

    private static Way way(Method method, double usd, double leakPercent, List<String> flags) {
        return new Way(method, usd, 0, 0, new double[] {1 - leakPercent / 100}, flags);
    }
}
