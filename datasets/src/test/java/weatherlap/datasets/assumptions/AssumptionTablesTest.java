package weatherlap.datasets.assumptions;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.method.Method;

class AssumptionTablesTest {
    private final AssumptionTables bundled = AssumptionTables.bundled();

    @TempDir
    Path temporary;

    @Test
    void theBundledTablesLoad() {
        assertThat(bundled.assumptions().steps(Method.INSERT)).isNotEmpty();
        assertThat(bundled.assumptions().faults(Method.FULL_FLANGE)).isNotEmpty();
        assertThat(bundled.texts()).hasSize(AssumptionTables.SCHEMAS.size() + 2);
    }

    @Test
    void whatIsWrittenOutReadsBackAsTheSame() throws IOException {
        write(bundled);
        assertThat(AssumptionTables.read(temporary).orElseThrow()).isEqualTo(bundled);
    }

    @Test
    void aStepMoreIsARowMore() throws IOException {
        write(bundled);
        Path steps = temporary.resolve("labour-steps.csv");
        Files.writeString(
                steps,
                Files.readString(steps) + "sing,both,Sing while the sealant cures,opening,1,2,3,,no,no,1,invented,\n");
        List<LabourStep> read =
                AssumptionTables.read(temporary).orElseThrow().assumptions().steps();
        assertThat(read).hasSize(bundled.assumptions().steps().size() + 1);
        assertThat(read.get(read.size() - 1).minutes().mean()).isEqualTo(2);
    }

    @Test
    void aScalarSetByHandIsMarkedAsSuchAndWrittenOut() throws IOException {
        AssumptionTables changed =
                bundled.with(List.of("crew_size=3", "sill_flange=sealed")).orElseThrow();
        assertThat(changed.assumptions().scenario().value(Scalar.CREW_SIZE)).isEqualTo(3);
        assertThat(changed.assumptions().scenario().choice(Choice.SILL_FLANGE)).isEqualTo("sealed");
        assertThat(changed.assumptions()
                        .scenario()
                        .amount(Scalar.CREW_SIZE)
                        .origin()
                        .orElseThrow()
                        .basis())
                .isEqualTo(Basis.JUDGEMENT);
        write(changed);
        assertThat(AssumptionTables.read(temporary).orElseThrow()).isEqualTo(changed);
    }

    @Test
    void aWageSetByHandIsMarkedAsSuchAndWrittenOut() throws IOException {
        AssumptionTables changed = bundled.with(
                        List.of("wage.national.carpenter=33.5", "burden.valley_county.helper=0.5"))
                .orElseThrow();
        Wage carpenter = changed.assumptions().wages().get(0);
        assertThat(carpenter.usdPerHour()).isEqualTo(33.5);
        assertThat(carpenter.burdenFraction())
                .isEqualTo(bundled.assumptions().wages().get(0).burdenFraction());
        assertThat(carpenter.origin().basis()).isEqualTo(Basis.JUDGEMENT);
        assertThat(changed.assumptions().wages())
                .filteredOn(wage -> !bundled.assumptions().wages().contains(wage))
                .extracting(wage -> wage.region() + " " + wage.role())
                .containsExactly("national carpenter", "valley_county helper");
        write(changed);
        assertThat(AssumptionTables.read(temporary).orElseThrow()).isEqualTo(changed);
    }

    @Test
    void wagesThatCannotBeSetAreNamed() {
        assertThat(bundled
                        .with(List.of(
                                "wage.national.carpentr=30", "wage.national.helper=0", "burden.national.helper=x"))
                        .errors()
                        .stream()
                        .map(Problem::toString))
                .containsExactly(
                        "--set:wage.national.carpentr: is not known; did you mean \"wage.national.carpenter\"?",
                        "--set:wage.national.helper: \"0\" is out of range (USD/h, above 0, at most 1000)",
                        "--set:burden.national.helper: \"x\" is not a number (fraction, 0 to 5)");
    }

    @Test
    void textsStayByteForByteWhereNothingChanges() {
        String crew = "crew_size=" + bundled.assumptions().scenario().whole(Scalar.CREW_SIZE);
        assertThat(bundled.with(List.of(crew)).orElseThrow().texts()).isEqualTo(bundled.texts());
    }

    @Test
    void everyChangeThatCannotBeMadeIsNamed() {
        Loaded<AssumptionTables> loaded =
                bundled.with(List.of("crew_siez=3", "crew_size=three", "sill_flange=shut", "draws", "region=atlantis"));
        assertThat(loaded.errors().stream().map(Problem::toString))
                .containsExactly(
                        "--set:crew_siez: is not known; did you mean \"crew_size\"?",
                        "--set:crew_size: \"three\" is not a number (people, 1 to 8)",
                        "--set:sill_flange: \"shut\" is not one of open, sealed",
                        "--set: \"draws\" must be written NAME=VALUE");
        assertThat(bundled.with(List.of("region=atlantis")).errors())
                .singleElement()
                .asString()
                .startsWith("scenario.toml:region: \"atlantis\" is not a region of wages.csv");
    }

    @Test
    void fittedMinutesGoIntoTheTable() throws IOException {
        List<LabourStep> steps = bundled.assumptions().steps().stream()
                .map(s -> new LabourStep(
                        s.id(),
                        s.method(),
                        s.tradeName(),
                        s.driver(),
                        new ThreePoint(1, 2.5, 3),
                        s.appliesWhen(),
                        s.coldSensitive(),
                        s.heightSensitive(),
                        s.people(),
                        s.origin()))
                .toList();
        AssumptionTables fitted = bundled.withSteps(steps);
        write(fitted);
        assertThat(AssumptionTables.read(temporary).orElseThrow().assumptions().steps())
                .isEqualTo(steps);
    }

    private void write(AssumptionTables tables) throws IOException {
        for (Map.Entry<String, String> text : tables.texts().entrySet()) {
            Files.writeString(temporary.resolve(text.getKey()), text.getValue());
        }
    }
}
