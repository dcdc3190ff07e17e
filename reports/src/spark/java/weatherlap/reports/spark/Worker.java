package weatherlap.reports.spark;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.sql.Row;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.PortfolioSum;
import weatherlap.datasets.table.Loaded;
import weatherlap.reports.compare.ResultFiles;
import weatherlap.reports.compare.ResultFiles.Rows;
import weatherlap.reports.inputs.Inputs;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.run.Simulator;

/**
 * Simulates the houses of a partition, by the library call that {@code compare} streams them through.
 *
 * @param arguments of the job, from which each machine reads assumptions and weather for itself, once
 * @param headers of the three tables
 * @param checksums of what the driver read; a machine that reads something else refuses to work
 */
record Worker(List<String> arguments, List<String> headers, Map<String, String> checksums)
        implements FlatMapFunction<Iterator<Row>, Part> {
    private static final Map<List<String>, Simulator> SIMULATORS = new ConcurrentHashMap<>();
    private static final int HOUSES_AT_A_TIME = 256;

    @Override
    public Iterator<Part> call(Iterator<Row> lines) {
        Simulator simulator = simulator();
        Iterable<SomeHouses> all = () -> SomeHouses.each(lines, headers, HOUSES_AT_A_TIME);
        return StreamSupport.stream(all.spliterator(), false)
                .map(some -> part(some, simulator))
                .iterator();
    }

    private Simulator simulator() {
        return SIMULATORS.computeIfAbsent(arguments, known -> {
            Inputs inputs = Inputs.besidePortfolio(CompareOnSpark.parsed(known).paths());
            if (!inputs.checksums().equals(checksums)) {
                throw new IllegalStateException(
                        "assumptions, weather or shop are not the same files on this machine as where the job was submitted");
            }
            return inputs.simulator();
        });
    }

    private static Part part(SomeHouses some, Simulator simulator) {
        Loaded<Portfolio> read = some.read(simulator.assumptions());
        List<ByteArrayOutputStream> texts = Stream.generate(ByteArrayOutputStream::new)
                .limit(ResultFiles.LAYOUTS.size())
                .toList();
        PortfolioSum sum = new PortfolioSum(simulator.draws());
        Optional<Portfolio> portfolio = read.value();
        if (portfolio.isEmpty()) {
            return new Part(List.of(), List.of(), sum, 0, some.problems(simulator.assumptions()));
        }
        simulate(portfolio.get(), simulator, rows -> {
            for (int i = 0; i < texts.size(); i++) {
                texts.get(i).writeBytes(rows.texts().get(i));
            }
            rows.choices().forEach(sum::add);
        });
        return new Part(
                some.houses().stream().map(SomeHouses.HouseText::id).toList(),
                texts.stream().map(ByteArrayOutputStream::toByteArray).toList(),
                sum,
                read.warnings().size(),
                List.of());
    }

    /** The houses of lines that could be read before, chosen for one by one. */
    static List<HouseChoice> choices(Iterator<Row> lines, List<String> headers, Simulator simulator) {
        List<HouseChoice> choices = new ArrayList<>();
        SomeHouses.each(lines, headers, HOUSES_AT_A_TIME)
                .forEachRemaining(some -> simulate(
                        some.read(simulator.assumptions()).value().orElseThrow(),
                        simulator,
                        rows -> choices.addAll(rows.choices())));
        return choices;
    }

    private static void simulate(Portfolio portfolio, Simulator simulator, Consumer<Rows> taker) {
        double riskLimit = simulator.assumptions().scenario().value(Scalar.RISK_LIMIT);
        simulator.run(portfolio.houses().iterator(), 1, houses -> Rows.of(HouseChoice.each(houses, riskLimit)), taker);
    }
}
