package weatherlap.reports.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.plan.PlanSums;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.offer.ChoiceLine;
import weatherlap.reports.offer.Choices;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.SimulatedHouse;

/** What the page adds up for a choice is what the engine has for it: 200 random choices over houses of several kinds. */
class TickTableTest {
    private static final List<String> HOUSES =
            List.of("G0014", "G0003", "G0012", "G0046", "brick", "view", "rot", "G0045");
    private static final int CHOICES_A_HOUSE = 25;

    @Test
    void theSumsOfThePageAreThoseOfTheEngine() throws IOException {
        Inputs inputs = Inputs.read(HandoutFiles.demo());
        double limit = inputs.assumptions().assumptions().scenario().value(Scalar.RISK_LIMIT);
        Random random = new Random(20260128);
        int tried = 0;
        int within = 0;
        for (String id : HOUSES) {
            House house = house(inputs, id);
            SimulatedHouse simulated = inputs.simulator().simulateForPlans(house);
            Map<Method, HouseTakeoff> each = inputs.simulator().takeoff(house);
            Choices choices = Choices.of(simulated, limit, each, Optional.empty());
            Handout page = HandoutFiles.maker(inputs, house).page();
            JsonNode data =
                    new ObjectMapper().readTree(page.ticks().orElseThrow().json());
            for (int c = 0; c < CHOICES_A_HOUSE; c++) {
                Sum sum = new Sum(data, random);
                Plan plan = Plan.of(simulated.parts(), sum.methods());
                assertThat(sum.usd).as("%s %s", id, sum.methods()).isCloseTo(plan.priceUsd(), within(1e-4));
                HouseTakeoff mixed = HouseTakeoff.mixed(each, sum.methods());
                int days = mixed.work().crewDays().days();
                assertThat(days).as("days of %s %s", id, sum.methods()).isBetween(sum.fullDays(), sum.days() + 1);
                within += days <= sum.days() ? 1 : 0;
                double glass = mixed.openings().stream()
                        .mapToDouble(o -> o.geometry().replaced().glassFt2())
                        .sum();
                assertThat(sum.glass).isCloseTo(glass, within(1e-5));
                double leaks = PlanSums.expectedLeaks(simulated.parts(), plan);
                assertThat(sum.rank(data)).isEqualTo(choices.leaks().rank(leaks).name());
                assertThat(ChoiceLine.parse(
                                sum.line(data), house, choices.choice().closed()))
                        .isEqualTo(sum.methods());
                tried++;
            }
        }
        assertThat(tried).isEqualTo(200);
        assertThat(within).as("choices done within the days shown").isGreaterThan(190);
    }

    /** Where a wall has more ways to be done than a page holds, like windows are ticked together, and the page says so. */
    @Test
    void noWallHasMoreWaysThanItsPageHolds() throws IOException {
        Inputs inputs = Inputs.read(HandoutFiles.demo());
        int together = 0;
        for (House house : inputs.portfolio().houses()) {
            Ticks ticks = HandoutFiles.maker(inputs, house).page().ticks().orElseThrow();
            JsonNode data = new ObjectMapper().readTree(ticks.json());
            int windows = 0;
            for (JsonNode wall : data.get("walls")) {
                int ways = 1;
                for (JsonNode row : wall.get("rows")) {
                    ways *= row.get("methods").size();
                    windows += row.get("at").size();
                }
                assertThat(wall.get("usd").size())
                        .as(house.id())
                        .isEqualTo(ways)
                        .isBetween(1, 512);
            }
            assertThat(windows).isEqualTo(house.openingCount());
            assertThat(ticks.rows().size() < windows).isEqualTo(ticks.together());
            together += ticks.together() ? 1 : 0;
        }
        assertThat(together).isPositive();
    }

    @Test
    void aLineOfAnotherHouseOrOfWhatCannotBeBuiltIsRefused() {
        Inputs inputs = Inputs.read(HandoutFiles.demo());
        House rot = house(inputs, "rot");
        String line = ChoiceLine.of(rot, List.of(Method.INSERT, Method.INSERT, Method.INSERT, Method.INSERT));
        assertThatThrownBy(() -> maker(inputs, rot, line)).hasMessageContaining("cannot be done by insert");
        assertThatThrownBy(() -> maker(inputs, rot, line.replace("IIII", "LLLX")))
                .hasMessageContaining("letter X");
        assertThatThrownBy(() -> maker(inputs, house(inputs, "view"), line)).hasMessageContaining("was not made for");
        String ticked = ChoiceLine.of(
                rot, List.of(Method.FULL_FLANGE, Method.FULL_FRAME, Method.FULL_FRAME, Method.FULL_FLANGE));
        assertThat(maker(inputs, rot, ticked).page().offer().heads().get(0).title())
                .isEqualTo("Your own choice");
    }

    private static HandoutMaker maker(Inputs inputs, House house, String line) {
        return HandoutFiles.maker(inputs, house, SheetWords.plain(), Optional.of(line));
    }

    private static House house(Inputs inputs, String id) {
        return inputs.portfolio().houses().stream()
                .filter(house -> house.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** What the script of the page does, for one random choice. */
    private static final class Sum {
        private final Method[] methods;
        private double usd;
        private double days;
        private double full;
        private double glass;
        private double leaks;

        Sum(JsonNode data, Random random) {
            methods = new Method[data.get("windows").asInt()];
            int set = 0;
            for (JsonNode wall : data.get("walls")) {
                int way = 0;
                for (JsonNode row : wall.get("rows")) {
                    int i = random.nextInt(row.get("methods").size());
                    way = way * row.get("methods").size() + i;
                    glass += row.get("glass").get(i).asDouble();
                    leaks += row.get("leaks").get(i).asDouble();
                    Method method = Method.values()[row.get("methods").get(i).asInt()];
                    set |= 1 << method.ordinal();
                    for (JsonNode at : row.get("at")) {
                        methods[at.asInt()] = method;
                    }
                }
                usd += wall.get("usd").get(way).asDouble();
                days += wall.get("days").get(way).asDouble();
                full += wall.get("full").get(way).asDouble();
            }
            usd += data.get("usd").get("" + set).asDouble();
            days += data.get("days").get("" + set).asDouble();
            full += data.get("full").get("" + set).asDouble();
        }

        List<Method> methods() {
            return new ArrayList<>(List.of(methods));
        }

        int days() {
            return (int) Math.ceil(days - 0.001);
        }

        int fullDays() {
            return Math.min(days(), (int) Math.ceil(full - 0.001));
        }

        String rank(JsonNode data) {
            JsonNode span = data.get("leaks");
            if (!span.get("tells").asBoolean()) {
                return "SAME";
            }
            double least = span.get("least").asDouble();
            double place = (leaks - least) / (1 - least);
            List<String> names = List.of("LOWEST", "LOW", "MIDDLE", "HIGH");
            for (int i = 0; i < names.size(); i++) {
                if (place <= span.get("upTo").get(i).asDouble()) {
                    return names.get(i);
                }
            }
            return "HIGHEST";
        }

        String line(JsonNode data) {
            StringBuilder line = new StringBuilder(data.get("signs").asText()).append('-');
            for (Method method : methods) {
                line.append(data.get("letters").get(method.ordinal()).asText());
            }
            return line.toString();
        }
    }
}
