package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.analysis.choice.Decision;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.season.SeasonStudy;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.ClimateReader;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.table.Loaded;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.house.House;
import weatherlap.sim.rain.HourlyWeather;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.Simulator;

/**
 * Any two or three settings together, each within its own range and often at an end of it: refused with a message, or computed to the end
 * with finite numbers. Three hundred are tried, or {@code weatherlap.fuzz} where that is more (the profile fuzz).
 */
class SettingPairsTest {
    private static final int TRIES = Math.max(300, Integer.getInteger("weatherlap.fuzz", 150));
    private static final long FIRST_SEED = Long.getLong("weatherlap.fuzz.seed", 1);
    private static final int REPORT_EVERY = 150;

    @TempDir
    private static Path folder;

    private static AssumptionTables bundled;
    private static List<House> houses;
    private static HourlyWeather weather;

    @BeforeAll
    static void read() throws IOException {
        bundled = AssumptionTables.bundled();
        Corpus.PORTFOLIO.writeGood(folder.resolve("houses"));
        houses = Portfolios.read(folder.resolve("houses"), bundled.assumptions())
                .orElseThrow()
                .houses();
        Corpus.CLIMATE.writeGood(folder);
        weather = ClimateReader.read(List.of(folder.resolve("climate.csv")))
                .orElseThrow()
                .weather();
    }

    @Test
    void settingsThatAreSoundEachAreRefusedOrComputedTogether() {
        int computed = 0;
        for (int i = 0; i < TRIES; i++) {
            SplittableRandom random = new SplittableRandom(FIRST_SEED + i);
            List<String> changes = new ArrayList<>(List.of("draws=4"));
            int settings = 2 + random.nextInt(2);
            for (int s = 0; s < settings; s++) {
                changes.add(change(random));
            }
            String what = "seed " + (FIRST_SEED + i) + ", " + changes;
            Loaded<AssumptionTables> tables = bundled.with(changes);
            if (tables.errors().isEmpty()) {
                compute(rows(tables.orElseThrow().assumptions(), random), what);
                if (computed++ % REPORT_EVERY == 0) {
                    report(changes, what);
                }
            } else {
                assertThat(tables.errors()).as(what).allSatisfy(problem -> assertThat(problem.toString())
                        .matches("(scenario|wages|--set)[^:]*:.+"));
            }
        }
        assertThat(computed).as("settings that go together").isBetween(TRIES / 2, TRIES - 1);
    }

    private static String change(SplittableRandom random) {
        int kind = random.nextInt(8);
        if (kind == 0) {
            List<Choice> choices = Stream.of(Choice.values())
                    .filter(choice -> !choice.allowed().isEmpty())
                    .toList();
            Choice choice = choices.get(random.nextInt(choices.size()));
            return choice.key() + "="
                    + choice.allowed().get(random.nextInt(choice.allowed().size()));
        }
        List<Scalar> scalars = Stream.of(Scalar.values())
                .filter(scalar -> scalar != Scalar.DRAWS)
                .toList();
        Scalar scalar = scalars.get(random.nextInt(scalars.size()));
        double value =
                switch (random.nextInt(4)) {
                    case 0 -> scalar.low();
                    case 1 -> scalar.high();
                    case 2 -> scalar.low() + Math.pow(random.nextDouble(), 6) * (scalar.high() - scalar.low());
                    default -> scalar.low() + random.nextDouble() * (scalar.high() - scalar.low());
                };
        double whole = scalar.whole() ? Math.rint(value) : value;
        return String.format(
                Locale.ROOT, "%s=%s", scalar.key(), BigDecimal.valueOf(whole).toPlainString());
    }

    /** Now and then a labor step or a material at an end of what its columns allow, too. */
    private static Assumptions rows(Assumptions assumptions, SplittableRandom random) {
        Assumptions changed = assumptions;
        if (random.nextInt(4) == 0) {
            List<LabourStep> steps = new ArrayList<>(assumptions.steps());
            int at = random.nextInt(steps.size());
            double minutes = random.nextBoolean() ? 0 : random.nextInt(1, 100_001);
            steps.set(at, steps.get(at).withMinutes(ThreePoint.exactly(minutes)));
            changed = changed.withSteps(steps);
        }
        if (random.nextInt(4) == 0) {
            List<Material> materials = new ArrayList<>(assumptions.materials());
            int at = random.nextInt(materials.size());
            materials.set(at, materials.get(at).withPrice(ThreePoint.exactly(random.nextBoolean() ? 0 : 1e6)));
            changed = changed.withMaterials(materials);
        }
        return AssumptionTables.contradictions(changed).isEmpty() ? changed : assumptions;
    }

    private static void compute(Assumptions assumptions, String what) {
        Scenario scenario = assumptions.scenario();
        try {
            Simulator simulator = new Simulator(
                    assumptions,
                    RainClimate.of(weather, scenario),
                    scenario.choice(Choice.SAMPLING, Sampling.class),
                    scenario.whole(Scalar.DRAWS),
                    1);
            List<HouseChoice> choices = new ArrayList<>();
            simulator.run(
                    houses.iterator(),
                    1,
                    simulated -> simulated.stream()
                            .map(house -> HouseChoice.of(house, scenario.value(Scalar.RISK_LIMIT)))
                            .toList(),
                    choices::addAll);
            for (HouseChoice choice : choices) {
                for (MethodResult result : choice.result().methods().values()) {
                    assertThat(List.of(
                                    result.priceUsd(),
                                    result.costUsd().p90(),
                                    result.grossProfitUsd(),
                                    result.horizonCostUsd().p90()))
                            .as(what)
                            .allMatch(Double::isFinite);
                }
            }
            Decision decision = Decision.of(choices, scenario, false);
            SeasonStudy.of(choices, decision.study().rule(), scenario, OptionalDouble.empty());
        } catch (RuntimeException | OutOfMemoryError e) {
            throw new AssertionError(what, e);
        }
    }

    private static void report(List<String> changes, String what) {
        List<Object> words = new ArrayList<>(
                List.of("compare", folder.resolve("houses"), "--quiet", "--force", "--out", folder.resolve("out")));
        changes.forEach(change -> words.addAll(List.of("--set", change)));
        Cli cli = Cli.run(words.toArray());
        assertThat(cli.status()).as(what + ": " + cli.err()).isZero();
    }
}
