package weatherlap.reports.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.datasets.shop.Shop;
import weatherlap.reports.format.Html;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.jobs.HandoutWishes;
import weatherlap.reports.page.Paper;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Language;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.house.House;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.Simulator;

/** What a price is made of, what the shop earns and what it pays stand in no byte of what a family is given. */
class NoCostsTest {
    private static final Pattern NUMBER = Pattern.compile("\\d[\\d,]*(\\.\\d+)?");
    private static final double LEAST_TOLD_APART = 1000;

    /**
     * Two shops ask the same for every plan; one pays half as much for everything and earns the rest. Whatever of cost or margin came
     * through to the family would tell their sheets apart.
     */
    @ParameterizedTest
    @ValueSource(strings = {"G0014", "brick", "G0045"})
    void twoShopsOfOnePriceAndOtherCostsGiveTheSameBytes(String id) throws IOException {
        Inputs inputs = Inputs.read(HandoutFiles.demo());
        House house = house(inputs, id);
        Assumptions shop = inputs.assumptions().assumptions();
        Assumptions one = shop.with(shop.scenario().with(Choice.WARRANTY_COVERS, "nothing"));
        Assumptions other = halfTheCosts(one);
        Simulator first = simulator(one, inputs);
        Simulator second = simulator(other, inputs);
        MethodResult dear = first.simulate(house).first();
        MethodResult cheap = second.simulate(house).first();
        assertThat(cheap.costParts().get("labour"))
                .isLessThan(0.51 * dear.costParts().get("labour"));
        assertThat(cheap.grossProfitUsd()).isGreaterThan(1.2 * dear.grossProfitUsd());

        HandoutMaker ours = maker(house, first);
        HandoutMaker theirs = maker(house, second);
        assertThat(Html.render("handout.jte", theirs.page())).isEqualTo(Html.render("handout.jte", ours.page()));
        assertThat(pdf(theirs)).isEqualTo(pdf(ours));
    }

    private static Assumptions halfTheCosts(Assumptions shop) {
        Scenario scenario = shop.scenario();
        double reserve = scenario.value(Scalar.SERVICE_RESERVE);
        double kept = 1 - scenario.value(Scalar.GROSS_MARGIN) - reserve;
        for (Scalar cost : List.of(
                Scalar.PERMIT_USD,
                Scalar.DISPOSAL_USD_PER_TON,
                Scalar.TIPPING_LEAST_USD,
                Scalar.OVERHEAD_USD_PER_CREW_HOUR)) {
            scenario = scenario.with(cost, scenario.value(cost) / 2);
        }
        return shop.with(scenario.with(Scalar.GROSS_MARGIN, 1 - reserve - kept / 2))
                .withMaterials(shop.materials().stream()
                        .map(m -> new Material(
                                m.id(),
                                m.method(),
                                m.tradeName(),
                                m.driver(),
                                m.quantityPerDriver(),
                                m.unit(),
                                m.wasteFraction(),
                                m.soldAs(),
                                m.packageSize(),
                                m.price().times(0.5),
                                m.appliesWhen(),
                                m.origin()))
                        .toList())
                .withUnitPrices(shop.unitPrices().stream()
                        .map(u -> new UnitPrice(
                                u.method(),
                                u.operation(),
                                u.baseUsd() / 2,
                                u.usdPerUnitedInch() / 2,
                                u.ratingPsf(),
                                u.origin()))
                        .toList())
                .withWages(shop.wages().stream()
                        .map(w -> new Wage(w.region(), w.role(), w.usdPerHour() / 2, w.burdenFraction(), w.origin()))
                        .toList());
    }

    /** Every number of the files that a family is given, in text, data, drawings and metadata, against those of the inside page. */
    @Test
    void noNumberOfTheInsidePageStandsInTheFamilysFiles(@TempDir Path folder) throws IOException {
        Path out = folder.resolve("out");
        HandoutFiles.write(
                HandoutFiles.demo(), "G0014", Paper.LETTER, new HandoutWishes(Language.EN, true, true, ""), out);
        String inside = text(out.resolve("inside.pdf"));
        assertThat(inside).contains("NOT FOR THE FAMILY", "Gross margin", "Floor price", "What speaks for it");
        Inputs inputs = Inputs.read(HandoutFiles.demo());
        var result = inputs.simulator().simulate(house(inputs, "G0014"));
        List<Double> secret = Stream.concat(
                        inside.lines()
                                .filter(line -> line.matches("(Direct|Gross profit|Floor|Room).*\\$.*"))
                                .flatMap(line -> numbers(line.substring(line.indexOf('$')))),
                        result.methods().values().stream()
                                .flatMap(method -> Stream.concat(
                                        method.costParts().values().stream(),
                                        Stream.of(method.costUsd().mean(), method.grossProfitUsd()))))
                .filter(value -> value >= LEAST_TOLD_APART)
                .toList();
        assertThat(secret).hasSizeGreaterThan(15);
        for (String file : List.of("handout.html", "handout.pdf")) {
            String all = file.endsWith(".html")
                    ? Files.readString(out.resolve(file))
                    : text(out.resolve(file)) + metadata(out.resolve(file));
            List<Double> told =
                    numbers(all).filter(value -> value >= LEAST_TOLD_APART - 1).toList();
            assertThat(told).as(file).isNotEmpty();
            assertThat(secret).as(file).allSatisfy(value -> assertThat(told)
                    .noneMatch(number -> Math.rint(number) == Math.rint(value)));
            assertThat(all.toLowerCase(java.util.Locale.ROOT))
                    .doesNotContain("margin:0.", "gross", "profit", "floor price", "overhead", "markup", "wage");
        }
    }

    @Test
    void aSheetWithoutPricesHasNone(@TempDir Path folder) throws IOException {
        Path out = folder.resolve("out");
        HandoutFiles.write(
                HandoutFiles.demo(), "G0045", Paper.LETTER, new HandoutWishes(Language.EN, false, false, ""), out);
        assertThat(text(out.resolve("handout.pdf"))).doesNotContain("$", "Price");
        String page = Files.readString(out.resolve("handout.html"));
        String script = page.substring(page.lastIndexOf("<script>"), page.lastIndexOf("</script>"));
        assertThat(page.replace(script, "")).doesNotContain("$", "\"usd\"", "\"terms\"");
        assertThat(out.resolve("inside.pdf")).doesNotExist();
    }

    private static Simulator simulator(Assumptions assumptions, Inputs inputs) {
        Scenario scenario = assumptions.scenario();
        return new Simulator(
                assumptions,
                RainClimate.of(inputs.climate(), scenario),
                scenario.choice(Choice.SAMPLING, Sampling.class),
                scenario.whole(Scalar.DRAWS),
                7);
    }

    private static HandoutMaker maker(House house, Simulator simulator) {
        return HandoutMaker.of(
                house, simulator, new SheetWords(FamilyWords.in(Language.EN), Shop.UNNAMED, true), Optional.empty());
    }

    private static House house(Inputs inputs, String id) {
        return inputs.portfolio().houses().stream()
                .filter(house -> house.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static byte[] pdf(HandoutMaker handout) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        TwoPages.of(handout, Paper.LETTER).writeTo(bytes);
        return bytes.toByteArray();
    }

    private static Stream<Double> numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(found -> Double.parseDouble(found.group().replace(",", "")));
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static String metadata(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            StringBuilder all = new StringBuilder();
            var information = document.getDocumentInformation();
            information.getMetadataKeys().forEach(key -> all.append(' ')
                    .append(information.getPropertyStringValue(key)));
            var catalog = document.getDocumentCatalog().getMetadata();
            if (catalog != null) {
                all.append(new String(catalog.toByteArray(), StandardCharsets.UTF_8));
            }
            return all.toString();
        }
    }
}
