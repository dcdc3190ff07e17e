package weatherlap.datasets.jobs;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

/**
 * The house behind a job: that of a portfolio where the record names one of it, else the one that stands for the facts of the record,
 * which jobs of equal facts share.
 */
public final class JobHouses {
    private static final Map<Fact, Function<House, String>> COMPARED = Map.of(
            Fact.CLADDING, house -> word(house.cladding()),
            Fact.BARRIER, house -> word(house.barrier()),
            Fact.STOREYS, house -> Integer.toString(house.storeys()));

    private final Map<String, House> measured;
    private final Map<Map<Fact, String>, House> made = new ConcurrentHashMap<>();

    private JobHouses(Map<String, House> measured) {
        this.measured = measured;
    }

    /** @param portfolio houses that records may name */
    public static JobHouses of(List<House> portfolio) {
        return new JobHouses(portfolio.stream().collect(Collectors.toMap(House::id, house -> house)));
    }

    /** Jobs whose records name no house. */
    public static JobHouses unmeasured() {
        return new JobHouses(Map.of());
    }

    public House of(JobRecord job) {
        return named(job).orElseGet(() -> made.computeIfAbsent(JobHouse.facts(job), JobHouse::of));
    }

    /** Whether the house of a job was measured. */
    public boolean isMeasured(JobRecord job) {
        return named(job).isPresent();
    }

    private Optional<House> named(JobRecord job) {
        return job.houseId().map(measured::get);
    }

    /** Reports where a record contradicts itself or its house. */
    void check(Row row, JobRecord job, Problems problems) {
        if (!measured.isEmpty() && job.houseId().isPresent() && named(job).isEmpty()) {
            row.warning(
                    problems,
                    "house_id",
                    Quoted.of(row.text("house_id"))
                            + " is not one of your measured houses; the row counts as it stands, with ordinary values"
                            + " where it is empty");
        }
        named(job).ifPresent(house -> {
            if (job.openings() > house.openingCount()) {
                row.error(
                        problems,
                        "openings",
                        job.openings() + " are more than the " + house.openingCount() + " of house "
                                + Quoted.of(house.id()) + " in the portfolio");
            }
            COMPARED.forEach((fact, of) -> {
                String told = job.facts().getOrDefault(fact, of.apply(house));
                if (!told.equals(of.apply(house))) {
                    row.warning(
                            problems,
                            fact.key(),
                            Quoted.of(told) + " is " + of.apply(house) + " in your measured houses, and that counts");
                }
            });
        });
        Method method = job.method();
        Cladding cladding = of(job).cladding();
        if (!method.isOpenTo(cladding)) {
            row.error(
                    problems,
                    "method",
                    Quoted.of(method.word()) + " is never done behind " + word(cladding)
                            + ", which does not come down (" + allowed(cladding) + ")");
        }
    }

    private static String allowed(Cladding cladding) {
        return Method.openTo(cladding).stream().map(Method::word).collect(Collectors.joining(", "));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
