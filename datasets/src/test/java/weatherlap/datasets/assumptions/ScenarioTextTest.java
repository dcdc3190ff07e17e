package weatherlap.datasets.assumptions;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Source;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

class ScenarioTextTest {
    private final Problems problems = new Problems();
    private String bundled;

    @BeforeEach
    void load() throws IOException {
        try (var in = ScenarioText.class.getResourceAsStream(ScenarioText.FILE)) {
            bundled = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void theBundledScenarioGivesEveryScalarAndChoice() {
        Optional<Scenario> scenario = ScenarioText.read(bundled, problems);
        assertThat(problems.errors()).isEmpty();
        assertThat(scenario.orElseThrow().settings()).hasSize(Scalar.values().length);
    }

    @Test
    void whatIsWrittenReadsBack() {
        Scenario scenario = ScenarioText.read(bundled, problems).orElseThrow();
        assertThat(ScenarioText.read(ScenarioText.write(scenario), problems)).contains(scenario);
        Scenario changed = scenario.with(Scalar.CREW_SIZE, 3).with(Choice.SILL_FLANGE, "sealed");
        assertThat(ScenarioText.read(ScenarioText.write(changed), problems)).contains(changed);
    }

    @Test
    void textWithWhatTomlEscapesReadsBack() {
        String source = "source = \"a \\\"b\\\" c\\\\d\\r\\n\\te, 30 %\"";
        Scenario scenario = ScenarioText.read(
                        bundled.replaceFirst("source = \".*\"", Matcher.quoteReplacement(source)), problems)
                .orElseThrow();
        String written = ScenarioText.write(scenario);
        assertThat(Source.of(ScenarioText.FILE, written).text(ScenarioText.LONGEST, problems))
                .contains(written);
        assertThat(ScenarioText.read(written, problems)).contains(scenario);
        assertThat(problems.errors()).isEmpty();
    }

    @Test
    void aValueThatIsNoNumberInRangeIsRefused() {
        assertThat(errors("value = 5100", "[repair")).isEmpty();
        assertThat(error("crew_size", "value = 2", "value = 99"))
                .matches(
                        "scenario.toml:\\d+:crew_size: value \"99\" is out of range \\(people, 1 to 8\\); the nearest is 8");
        assertThat(error("crew_size", "value = 2", "value = nan"))
                .matches("scenario.toml:\\d+:crew_size: value \"NaN\" is not a number \\(people, 1 to 8\\)");
        assertThat(error("crew_size", "value = 2", "value = inf"))
                .matches("scenario.toml:\\d+:crew_size: value \"Infinity\" is not a number \\(people, 1 to 8\\)");
        assertThat(error("crew_size", "value = 2", "value = \"2\""))
                .matches("scenario.toml:\\d+:crew_size: value is not a number \\(people, 1 to 8\\)");
        assertThat(error("crew_size", "value = 2", "valu = 2")).contains("did you mean \"value\"?");
    }

    @Test
    void aFractionOfWhatIsCountedIsRefused() {
        assertThat(error("crew_size", "value = 2", "value = 2.5"))
                .matches("scenario.toml:\\d+:crew_size: value \"2.5\" is not a whole number \\(people, 1 to 8\\)");
        assertThat(error("horizon_years", "low = 10", "low = 10.5")).contains("low \"10.5\" is not a whole number");
        assertThat(errors("[crew_size]\n# people in a crew\nvalue = 2", "[crew_size]\nvalue = 2.0"))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "seed=1.5",
                "draws=20.5",
                "horizon_years=19.5",
                "warranty_years=0.5",
                "crew_size=1.5",
                "panes=1.5",
                "reseal_years=2.5",
                "spell_dry_hours=95.5"
            })
    void aFractionOfWhatIsCountedIsRefusedOnTheCommandLineToo(String change) {
        Problems found = new Problems();
        Changes.apply(AssumptionTables.bundled().assumptions(), List.of(change), found);
        assertThat(found.errors()).singleElement().asString().contains("is not a whole number");
    }

    @Test
    void aUnitABasisAndASourceAreHeldToTheirWords() {
        assertThat(error("crew_size", "unit = \"people\"", "unit = \"crews\""))
                .endsWith("unit \"crews\" must be \"people\"");
        assertThat(error("crew_size", "basis = \"common practice\"", "basis = \"habit\""))
                .contains("basis \"habit\" is not one of standard");
        assertThat(error("crew_size", "basis = \"common practice\"", "basis = \"standard\""))
                .contains("source is empty");
        assertThat(error("discount_rate", "low = 0.02", "low = 0.09")).endsWith("low 0.09 is above high 0.08");
    }

    /** As where --set moves it there. */
    @Test
    void aRangeThatTheValueLeavesCountsForNothing() {
        Scenario read = ScenarioText.read(bundled.replace("low = 0.33", "low = 0.45"), problems)
                .orElseThrow();
        assertThat(read.settings().get(Scalar.GROSS_MARGIN).range()).isEmpty();
        assertThat(problems.warnings())
                .singleElement()
                .asString()
                .matches("scenario.toml:\\d+:gross_margin: value 0.4 is outside low 0.45 and high 0.5, which .*");
    }

    @Test
    void aChoiceIsOneOfItsWords() {
        assertThat(errors("sill_flange = \"open\"", "sill_flange = \"opne\""))
                .singleElement()
                .asString()
                .endsWith(":sill_flange: \"opne\" is not one of open, sealed; did you mean \"open\"?");
    }

    @Test
    void everyNumberThatIsMissingIsNamed() {
        assertThat(ScenarioText.read("", problems)).isEmpty();
        long choices = Arrays.stream(Choice.values())
                .filter(choice -> choice.whenMissing().isEmpty())
                .count();
        assertThat(problems.errors()).hasSize((int) (Scalar.values().length + choices));
    }

    @Test
    void aFileFromBeforeTheSamplingCouldBeChosenStillReads() {
        String older =
                bundled.lines().filter(line -> !line.startsWith("sampling")).collect(Collectors.joining("\n"));
        assertThat(ScenarioText.read(older, problems).orElseThrow().choice(Choice.SAMPLING))
                .isEqualTo("sobol");
    }

    @Test
    void aFileFromBeforeTheWarrantyCouldBeChosenStillReadsAndIsToldWhatIsNoLongerUsed() {
        String older = bundled.lines()
                        .filter(line -> !line.startsWith("warranty_covers"))
                        .collect(Collectors.joining("\n"))
                + "\n[callback_cost_usd]\nvalue = 350\n";
        assertThat(ScenarioText.read(older, problems).orElseThrow().choice(Choice.WARRANTY_COVERS))
                .isEqualTo("own_work");
        assertThat(problems.warnings())
                .singleElement()
                .asString()
                .matches("scenario.toml:\\d+:callback_cost_usd: is no longer used: .*");
    }

    @Test
    void whatIsNotTomlIsReportedWithItsLine() {
        assertThat(errors("[crew_size]", "[crew_size"))
                .singleElement()
                .asString()
                .matches("scenario.toml:\\d+: is not TOML: .*");
        Problems duplicates = new Problems();
        ScenarioText.read(bundled + "\n[crew_size]\nvalue = 2\n", duplicates);
        assertThat(duplicates.errors()).singleElement().asString().startsWith("scenario.toml:");
    }

    @Test
    void textMadeToExhaustAMachineIsRefusedInOneMessage() {
        for (String bomb : new String[] {
            "a = " + "[".repeat(100_000),
            "[" + "a.".repeat(50_000) + "a]",
            "a".repeat(50_000) + " = 1",
            "a = " + "9".repeat(100_000),
            "a = 1e999999999",
            "a = {" + "a={".repeat(40_000),
            "a = [\n" + "[\n".repeat(50_000)
        }) {
            Problems found = new Problems();
            assertThat(ScenarioText.read(bomb, found)).isEmpty();
            assertThat(found.hasErrors()).isTrue();
        }
    }

    /** The one error that a change within the table of a scalar brings. */
    private String error(String table, String from, String to) {
        int start = bundled.indexOf("[" + table + "]");
        int place = bundled.indexOf(from, start);
        assertThat(place).as(from).isPositive();
        String changed = bundled.substring(0, place) + to + bundled.substring(place + from.length());
        Problems found = new Problems();
        ScenarioText.read(changed, found);
        assertThat(found.errors()).isNotEmpty();
        return found.errors().get(0).toString();
    }

    private java.util.List<Problem> errors(String from, String to) {
        Problems found = new Problems();
        ScenarioText.read(bundled.replace(from, to), found);
        return found.errors();
    }
}
