package weatherlap.reports;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.generator.BundledMix;
import weatherlap.datasets.generator.HouseGenerator;
import weatherlap.datasets.generator.Mix;
import weatherlap.datasets.portfolio.PortfolioScan;
import weatherlap.datasets.portfolio.PortfolioText;
import weatherlap.datasets.portfolio.SortedPortfolio;
import weatherlap.datasets.sorting.Scratch;
import weatherlap.reports.compare.ResultFiles;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.SimulatedHouse;
import weatherlap.sim.run.Simulator;

/** What one house of a made portfolio costs, every method: reading it, taking it off, simulating it, planning it, writing its rows. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@OperationsPerInvocation(PortfolioBenchmark.HOUSES)
@Fork(1)
public class PortfolioBenchmark {
    static final int HOUSES = 200;

    private final Assumptions assumptions = AssumptionTables.bundled().assumptions();
    private final List<House> houses = new HouseGenerator(Mix.bundled(BundledMix.NEW_YORK), 7)
            .houses(HOUSES)
            .toList();
    private final Simulator simulator = new Simulator(
            assumptions, RainClimate.of(DemoClimate.hourly(), assumptions.scenario()), Sampling.SOBOL, 256, 1);
    private Path folder;

    /** Houses simulated, all at once as no run has them; kept only where they are asked for. */
    @State(Scope.Benchmark)
    public static class Simulated {
        private List<SimulatedHouse> houses;
        private List<HouseChoice> choices;
        private double riskLimit;

        @Setup(Level.Trial)
        public void simulate(PortfolioBenchmark portfolio) {
            riskLimit = portfolio.assumptions.scenario().value(Scalar.RISK_LIMIT);
            houses = portfolio.houses.stream()
                    .map(portfolio.simulator::simulateForPlans)
                    .toList();
            choices = HouseChoice.each(houses, riskLimit);
        }
    }

    @Setup(Level.Trial)
    public void writePortfolio() throws IOException {
        folder = Files.createTempDirectory("weatherlap-benchmark");
        try (Writer houseRows = Files.newBufferedWriter(folder.resolve("houses.csv"));
                Writer elevationRows = Files.newBufferedWriter(folder.resolve("elevations.csv"));
                Writer openingRows = Files.newBufferedWriter(folder.resolve("openings.csv"))) {
            PortfolioText text = new PortfolioText(houseRows, elevationRows, openingRows);
            for (House house : houses) {
                text.add(house);
            }
        }
    }

    @TearDown(Level.Trial)
    public void deletePortfolio() throws IOException {
        for (String file : List.of("houses.csv", "elevations.csv", "openings.csv")) {
            Files.delete(folder.resolve(file));
        }
        Files.delete(folder);
    }

    @Benchmark
    public List<House> read() {
        List<House> read = new ArrayList<>();
        try (SortedPortfolio portfolio =
                SortedPortfolio.open(folder, PortfolioScan.of(folder), Optional.of(assumptions), Scratch.inMemory())) {
            portfolio.forEachRemaining(read::add);
        }
        if (read.size() != HOUSES) {
            throw new UncheckedIOException(new IOException("not every house was read"));
        }
        return read;
    }

    @Benchmark
    public void takeOff(Blackhole taker) {
        houses.forEach(house -> taker.consume(simulator.takeoff(house)));
    }

    @Benchmark
    public void simulate(Blackhole taker) {
        houses.forEach(house -> taker.consume(simulator.simulateForPlans(house)));
    }

    @Benchmark
    public List<HouseChoice> plan(Simulated simulated) {
        return HouseChoice.each(simulated.houses, simulated.riskLimit);
    }

    @Benchmark
    public ResultFiles.Rows write(Simulated simulated) {
        return ResultFiles.Rows.of(simulated.choices);
    }
}
