package weatherlap.reports.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.plan.Plan.WallPlan;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.format.Html;
import weatherlap.reports.handout.Handout.MixedWindows;
import weatherlap.reports.handout.Handout.Named;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.offer.OfferTable.Line;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Language;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.Simulator;

/** The plan window by window stands on the sheet as the search gives it: a price, a reason for each window, no figure of leaks. */
class MixedPlanTest {
    private static final Pattern LOWER = Pattern.compile("the price is \\$([\\d,.]+\\d) lower");
    private static final FamilyWords WORDS = FamilyWords.in(Language.EN);

    @Test
    void everyMixedPlanOfTheDemoIsAChoiceWithAReasonForEachWindow() {
        Inputs inputs = Inputs.read(HandoutFiles.demo());
        Simulator simulator = inputs.simulator();
        double limit = inputs.assumptions().assumptions().scenario().value(Scalar.RISK_LIMIT);
        int mixed = 0;
        int ticked = 0;
        for (House house : inputs.portfolio().houses()) {
            HouseChoice choice = HouseChoice.of(simulator.simulateForPlans(house), limit);
            Handout page = HandoutFiles.maker(inputs, house).page();
            Optional<MixedWindows> windows = page.mixed();
            assertThat(windows.isPresent())
                    .as(house.id())
                    .isEqualTo(choice.family().single().isEmpty());
            theAdviceAndTheBoxesAgree(page);
            if (page.methods().size()
                    > page.windows().get(0).drawn().get(0).views().size() - 1) {
                ticked++;
                assertThat(heads(Html.render("handout.jte", page)))
                        .as(house.id())
                        .isEqualTo(
                                1 + page.windows().get(0).drawn().get(0).views().size());
            }
            if (windows.isPresent()) {
                mixed++;
                Plan plan = choice.family();
                assertThat(line(page, "Price").cells()).contains(Numbers.usd(Math.rint(plan.priceUsd())));
                assertThat(line(page, "Leak damage in 20 years*").cells()).allMatch(cell -> !cell.contains("%"));
                assertThat(windows.get().windows()).allSatisfy(line -> assertThat(line.words())
                        .matches("(Only|Keeps|Comes|Shares|Part|An insert is out,) .*\\.")
                        .doesNotContain("\u2013", "NaN", "%"));
                for (Method method : Method.values()) {
                    boolean explained = page.methods().stream()
                            .anyMatch(column -> column.style().equals(method.label()));
                    assertThat(explained
                                    || windows.get().windows().stream()
                                            .noneMatch(line -> (line.name() + line.words()).contains(method.label())))
                            .as("%s says what %s is where it names it", house.id(), method)
                            .isTrue();
                }
                assertThat(windows(windows.get())).containsExactlyInAnyOrderElementsOf(windows(house, plan));
            }
        }
        assertThat(mixed).isGreaterThan(5);
        assertThat(ticked).isPositive();
    }

    /** The columns that the table of windows has a head for; a method that is only ticked and explained has none. */
    private static long heads(String page) {
        String table = page.substring(page.indexOf("<table class=\"windows"));
        return Pattern.compile("<th scope=\"col\"")
                .matcher(table.substring(0, table.indexOf("</thead>")))
                .results()
                .count();
    }

    /** The price that an advice tells is the difference of two prices in the boxes; a risk that is alike in them is no reason for one. */
    private static void theAdviceAndTheBoxesAgree(Handout page) {
        List<Double> prices = line(page, "Price").cells().stream()
                .map(cell -> Double.parseDouble(cell.replaceAll("[$,]", "")))
                .toList();
        Matcher lower = LOWER.matcher(page.advice());
        if (lower.find()) {
            double told = Double.parseDouble(lower.group(1).replace(",", ""));
            assertThat(prices.stream().flatMap(one -> prices.stream().map(other -> one - other)))
                    .as(page.advice())
                    .contains(told);
        }
        if (line(page, "Leak damage in 20 years*").cells().stream().allMatch("about the same"::equals)) {
            assertThat(page.advice()).doesNotContain("lowest leak risk");
        }
        long badges = page.offer().heads().stream()
                .filter(head -> !head.badge().isEmpty())
                .count();
        assertThat(badges).as(page.advice()).isEqualTo(page.advice().startsWith("We advise") ? 1 : 0);
    }

    private static Line line(Handout page, String label) {
        return page.offer().lines().stream()
                .filter(line -> line.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    /** Full-flange at front wall w1; the same of every window. */
    private static List<String> windows(House house, Plan plan) {
        List<String> windows = new ArrayList<>();
        for (WallPlan wall : plan.walls()) {
            for (int o = 0; o < wall.methods().size(); o++) {
                windows.add(InWords.capital(wall.methods().get(o).label()) + " at "
                        + new Phrases(WORDS).wall(house, wall.elevation()) + " "
                        + wall.elevation().openings().get(o).id());
            }
        }
        return windows;
    }

    private static List<String> windows(MixedWindows mixed) {
        List<String> windows = new ArrayList<>();
        for (Named line : mixed.windows()) {
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
