package weatherlap.reports.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.plan.Plan.WallPlan;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.handout.Handout.Named;
import weatherlap.reports.handout.Handout.ThirdChoice;
import weatherlap.reports.inputs.Inputs;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.Simulator;

/** The plan window by window stands on the sheet as the search gives it, and only where it is neither of the two beside it. */
class WindowByWindowTest {
    @Test
    void everyMixedPlanOfTheDemoIsAThirdChoiceWithAReasonForEachWindow() {
        Inputs inputs = Inputs.read(HandoutFiles.demo());
        var assumptions = inputs.assumptions().assumptions();
        Simulator simulator = inputs.simulator();
        RainClimate climate = RainClimate.of(inputs.climate(), assumptions.scenario());
        double limit = assumptions.scenario().value(Scalar.RISK_LIMIT);
        int mixed = 0;
        for (House house : inputs.portfolio().houses()) {
            HouseChoice choice = HouseChoice.of(simulator.simulateForPlans(house), limit);
            Optional<ThirdChoice> third = HandoutMaker.of(house, simulator, assumptions, climate)
                    .page()
                    .third();
            assertThat(third.isPresent())
                    .as(house.id())
                    .isEqualTo(choice.family().single().isEmpty());
            if (third.isPresent()) {
                mixed++;
                Plan plan = choice.family();
                assertThat(third.get().offer())
                        .contains(
                                "Price " + Phrases.usd(plan.priceUsd()),
                                "comes to " + Phrases.usd(plan.horizonCostUsd()),
                                " likely ",
                                " with ")
                        // of leaks no figure, since no record of the shop bears one
                        .doesNotContain("chance", Numbers.percent(plan.leakProbability(), 0) + " (");
                assertThat(third.get().offer().contains("this one comes nearest"))
                        .isEqualTo(choice.atRisk());
                assertThat(third.get().windows()).allSatisfy(line -> assertThat(line.words())
                        .matches("(Only|Keeps|Costs|Shares|Part) .*\\.")
                        .doesNotContain("\u2013", "NaN", "%"));
                assertThat(windows(third.get())).containsExactlyInAnyOrderElementsOf(windows(house, plan));
            }
        }
        assertThat(mixed).isGreaterThan(5);
    }

    /** Full-flange at front wall w1; the same of every window. */
    private static List<String> windows(House house, Plan plan) {
        List<String> windows = new ArrayList<>();
        for (WallPlan wall : plan.walls()) {
            for (int o = 0; o < wall.methods().size(); o++) {
                windows.add(InWords.capital(wall.methods().get(o).inSentence()) + " at "
                        + Phrases.wall(house, wall.elevation()) + " "
                        + wall.elevation().openings().get(o).id());
            }
        }
        return windows;
    }

    private static List<String> windows(ThirdChoice third) {
        List<String> windows = new ArrayList<>();
        for (Named line : third.windows()) {
            String method = line.name().substring(0, line.name().indexOf(" at ") + 4);
            for (String wall : line.name().substring(method.length()).split("; ")) {
                int name = wall.contains(") ") ? wall.indexOf(") ") + 2 : wall.indexOf(" wall ") + 6;
                for (String key : wall.substring(name).split(", ")) {
                    windows.add(method + wall.substring(0, name) + key);
                }
            }
        }
        return windows;
    }
}
