package weatherlap.reports.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.shop.Shop;
import weatherlap.datasets.shop.ShopFile;
import weatherlap.reports.format.Html;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.offer.OfferTable.Line;
import weatherlap.reports.page.Paper;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Language;
import weatherlap.sim.house.House;
import weatherlap.sim.run.PlanParts;

/** Discount, tax and deposit of a shop, on a sheet in Spanish and on the page inside the shop. */
class ShopTermsOnSheetTest {
    private static final String TERMS = """
            round_price_to_usd = 50
            deposit_pct = 30
            [discount]
            label = "Paid by check"
            pct = 3
            [tax]
            label = "Sales tax"
            pct = 6.5
            """;

    private static final Pattern LOWER = Pattern.compile("Its price is \\$([\\d,]+) lower");

    @Test
    void theyAreToTheCentAndTheSalespersonReadsTheSheetsPrices(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve(ShopFile.FILE), TERMS);
        Shop shop = ShopFile.read(folder).value().orElseThrow().shop();
        Inputs inputs = Inputs.read(HandoutFiles.demo());
        House house = inputs.portfolio().houses().stream()
                .filter(one -> one.id().equals("G0003"))
                .findFirst()
                .orElseThrow();
        HandoutMaker handout =
                HandoutFiles.maker(inputs, house, new SheetWords(FamilyWords.in(Language.ES), shop, true));

        List<Line> lines = handout.page().offer().lines();
        assertThat(lines.subList(1, 5)).allSatisfy(line -> assertThat(line.cells())
                .as(line.label())
                .allMatch(cell -> cell.matches("\u2212?\\$[\\d,]+\\.\\d\\d")));

        PlanParts parts = inputs.simulator().simulateForPlans(house).parts();
        String inside = Html.render("inside.jte", handout.inside(Paper.LETTER, parts, parts, 0));
        assertThat(inside)
                .contains("All full-flange<span class=\"badge\">Todas con aleta</span>", "lower than all full-flange.")
                .doesNotContain("than todas", "a\u00f1os");
        List<Double> prices =
                lines.get(0).cells().stream().map(ShopTermsOnSheetTest::usd).toList();
        assertThat(LOWER.matcher(inside).results().map((MatchResult told) -> usd(told.group(1))))
                .isNotEmpty()
                .allMatch(told ->
                        prices.stream().anyMatch(one -> prices.stream().anyMatch(other -> one - other == told)));
    }

    private static double usd(String text) {
        return Double.parseDouble(text.replaceAll("[$,]", ""));
    }
}
