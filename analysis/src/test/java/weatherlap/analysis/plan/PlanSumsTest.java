package weatherlap.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.MadeHouses.Terms;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.made.MadeWall;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;
import weatherlap.sim.run.SimulatedHouse;

/** Plans of a house of two walls, reckoned by hand. All invented. */
class PlanSumsTest {
    private static final Terms TERMS = new Terms(10, 300);
    private static final SimulatedHouse MADE = MadeHouses.house(
            "h", TERMS, new Terms(40, 500), MadeHouses.Wall.sound(0, 1000, 700), MadeHouses.Wall.sound(0, 900, 800));
    private static final House HOUSE = MADE.result().house();
    private static final int FULL = PlanParts.mask(Set.of(Method.FULL_FLANGE));
    private static final int BOTH = FULL | PlanParts.mask(Set.of(Method.INSERT));

    /** A wall asks 7 USD where it is done by both methods, and 2 USD more for each of the three panels of its window. */
    private static final PlanParts PARTS = new PlanParts(
            HOUSE,
            List.of(
                    wall(0, way(Method.FULL_FLANGE, 500, 30, 4, 0.9, 1), way(Method.INSERT, 300, 80, 10, 0.6, 1)),
                    wall(1, way(Method.FULL_FLANGE, 400, 0, 0, 1, 1), way(Method.INSERT, 350, 40, 0, 0.8, 0.4))),
            setups(),
            new double[] {0.5, 1.5});

    @Test
    void aPlanCostsWhatItsPartsCost() {
        Plan flange = plan(Method.FULL_FLANGE, Method.FULL_FLANGE);
        assertThat(flange.priceUsd()).isEqualTo(500 + 6 + 400 + 6 + 60);
        assertThat(flange.horizonCostUsd()).isEqualTo(flange.priceUsd() + 30 + 4);
        assertThat(flange.leakProbability()).isEqualTo(0.05, within(1e-12));
        Plan mixed = plan(Method.FULL_FLANGE, Method.INSERT);
        assertThat(mixed.priceUsd()).isEqualTo(500 + 6 + 350 + 100);
        assertThat(mixed.leakProbability()).isEqualTo(1 - (0.9 * 0.8 + 0.4) / 2, within(1e-12));
        assertThat(PlanSums.wallUsd(PARTS.walls().get(0), List.of(Method.FULL_FLANGE)))
                .isEqualTo(506);
        assertThat(PlanSums.wallUsd(PARTS.walls().get(0), List.of(Method.INSERT)))
                .isEqualTo(300);
    }

    /** Damage falls on the draws that are wet, by how wet they are, and is dear where repairs are. */
    @Test
    void theHorizonOfAPlanDrawByDraw() {
        double[] flange = PlanCost.horizonUsd(PARTS, plan(Method.FULL_FLANGE, Method.FULL_FLANGE));
        assertThat(flange[0]).isEqualTo(972 + 4 + 0.1 * (30 * 2 / 0.1) * 0.5, within(1e-9));
        assertThat(flange[1]).isEqualTo(972 + 4, within(1e-9));
        double[] insert = PlanCost.horizonUsd(PARTS, plan(Method.INSERT, Method.INSERT));
        assertThat(insert[0]).isEqualTo(690 + 10 + 80 * 2 * 0.5 + 0.2 * (40 * 2 / 0.8) * 0.5, within(1e-9));
        assertThat(insert[1]).isEqualTo(690 + 10 + 0.6 * (40 * 2 / 0.8) * 1.5, within(1e-9));
    }

    @Test
    void sumsOfAPlan() {
        Plan flange = plan(Method.FULL_FLANGE, Method.FULL_FLANGE);
        Plan insert = plan(Method.INSERT, Method.INSERT);
        assertThat(PlanSums.expectedLeaks(PARTS, flange)).isEqualTo(0.05, within(1e-12));
        assertThat(PlanSums.expectedLeaks(PARTS, insert)).isEqualTo(0.2 + 0.4, within(1e-12));
        assertThat(PlanSums.damageUsd(PARTS, insert)).isEqualTo(120);
        assertThat(PlanSums.cheaper(PARTS, insert, flange)).isEqualTo(1);
        assertThat(PlanSums.cheaper(PARTS, flange, insert)).isZero();
        assertThat(PlanSums.cheaper(PARTS, flange, flange))
                .as("not cheaper than itself")
                .isZero();
    }

    /** A window of each method: the mixed plan costs 956 + 4 + what leaks, in the first draw 15 + 10 USD, in the second 90. */
    @Test
    void aPlanMayBeCheaperInSomeDraws() {
        Plan mixed = plan(Method.FULL_FLANGE, Method.INSERT);
        Plan flange = plan(Method.FULL_FLANGE, Method.FULL_FLANGE);
        assertThat(PlanSums.cheaper(PARTS, mixed, flange)).isEqualTo(0.5);
    }

    @Test
    void aPlanKnowsTheMethodOfEachWindow() {
        Plan mixed = plan(Method.FULL_FLANGE, Method.INSERT);
        Elevation second = HOUSE.elevations().get(1);
        assertThat(mixed.wall(second).methods()).containsExactly(Method.INSERT);
        assertThat(mixed.wall(second).single()).contains(Method.INSERT);
        assertThat(mixed.wall(second).uses(Method.INSERT)).isEqualTo("yes");
        assertThat(mixed.wall(second).uses(Method.FULL_FLANGE)).isEqualTo("no");
        assertThat(mixed.method(second, second.openings().get(0))).isEqualTo(Method.INSERT);
        assertThat(mixed.method(HOUSE.elevations().get(0), second.openings().get(0)))
                .isEqualTo(Method.FULL_FLANGE);
        assertThat(mixed.single()).isEmpty();
        assertThat(Plan.uses(mixed.methods(), Method.INSERT)).isEqualTo("part");
        assertThat(Plan.uses(mixed.methods(), Method.FULL_FRAME)).isEqualTo("no");
        Elevation bare = MadeWall.of("w1", MadeOpening.of("another").opening()).wall();
        assertThatThrownBy(() -> mixed.method(bare, second.openings().get(0))).hasMessageContaining("no opening o");
    }

    @Test
    void theDefaultsOfAHouseAreSetAgainstEachOther() {
        Wherever wherever = Wherever.of(MADE);
        assertThat(wherever.first().single()).isEqualTo(Optional.of(Method.FULL_FLANGE));
        assertThat(wherever.second().single()).isEqualTo(Optional.of(Method.INSERT));
        assertThat(wherever.horizonDifferenceUsd()).hasSize(2);
        assertThat((wherever.horizonDifferenceUsd()[0] + wherever.horizonDifferenceUsd()[1]) / 2)
                .isEqualTo(wherever.first().horizonCostUsd() - wherever.second().horizonCostUsd(), within(1e-9));
        assertThat(wherever.horizonDifferenceUsd()[1] - wherever.horizonDifferenceUsd()[0])
                .as("damage of 10 USD in the mean, all of it in the second draw")
                .isEqualTo(20, within(1e-9));
        HouseChoice choice = HouseChoice.each(List.of(MADE), 1).get(0);
        assertThat(choice.shopEarnsMoreUsd()).isEqualTo(300 - 500);
    }

    @Test
    void limitsStandInATableBesideEachOther() {
        assertThat(Limit.joined(EnumSet.of(Limit.RISK_LIMIT, Limit.BEHIND_MASONRY))
                        .split(";"))
                .hasSize(2);
    }

    private static Plan plan(Method first, Method second) {
        return Plan.of(PARTS, List.of(first, second));
    }

    private static Wall wall(int number, Way... ways) {
        BitSet panels = new BitSet();
        panels.set(4, 7);
        double[] fixed = new double[8];
        fixed[BOTH] = 7;
        double[] perPanel = {2, 2, 2, 2, 2, 2, 2, 2};
        Elevation elevation = HOUSE.elevations().get(number);
        return new Wall(
                elevation,
                fixed,
                perPanel,
                List.of(new Part(elevation.openings().get(0), panels, List.of(ways))));
    }

    private static double[] setups() {
        double[] usd = new double[8];
        usd[FULL] = 60;
        usd[BOTH] = 100;
        usd[BOTH & ~FULL] = 40;
        return usd;
    }

    private static Way way(Method method, double priceUsd, double damageUsd, double glassUsd, double... dry) {
        return new Way(method, priceUsd, damageUsd, glassUsd, dry, List.of());
    }
}
