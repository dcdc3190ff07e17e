package weatherlap.reports.whatif;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import weatherlap.reports.format.CellSheet;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.house.House;
import weatherlap.sim.labour.WorkingDay;
import weatherlap.sim.price.CrewRate;
import weatherlap.sim.price.Pricing;

/**
 * The numbers that a reader may change, what they are in the run, and where they stand on the sheet of the what-if.
 *
 * @param crews people that may be picked: the run's own, and those that the wages and a working day allow
 * @param years that may be picked, the run's own among them
 * @param regions of the houses shown, whose wages stand in the order of their table
 */
record OwnNumbers(
        Assumptions assumptions, Pricing pricing, List<Integer> crews, List<Integer> years, List<String> regions) {
    static final String SHEET = "What if";
    static final int HEADER = 4;
    static final int PROFIT = 5;
    static final int CREW = 6;
    static final int YEARS = 7;
    static final int SERVICE = 8;
    static final int OVERHEAD = 9;
    static final int GLASS = 10;
    static final int WAGES = 12;
    /** Column of the numbers that hold. */
    static final int NOW = 1;
    /** Column of what an hour of a person of the crew costs. */
    static final int RATE = 5;

    private static final List<Integer> OTHER_CREWS = List.of(1, 2, 3, 4, 5);
    private static final List<Integer> OTHER_YEARS = List.of(5, 10, 20, 30);

    static OwnNumbers of(Assumptions assumptions, List<House> houses) {
        List<String> regions = assumptions.wages().stream()
                .map(Wage::region)
                .distinct()
                .filter(region -> houses.stream()
                        .anyMatch(house ->
                                assumptions.wages(house).get(0).region().equals(region)))
                .toList();
        return new OwnNumbers(
                assumptions,
                Pricing.of(assumptions.scenario()),
                Each.where(
                        crews(assumptions),
                        people -> !Each.any(regions, region -> !CrewRate.isKnown(wages(assumptions, region), people))),
                years(assumptions),
                regions);
    }

    /** People of the run's own crew, and those that a working day leaves time to work. */
    static List<Integer> crews(Assumptions assumptions) {
        return with(
                assumptions.scenario().whole(Scalar.CREW_SIZE),
                OTHER_CREWS.stream().filter(people -> works(assumptions, people)));
    }

    /** The run's own horizon, and others. */
    static List<Integer> years(Assumptions assumptions) {
        return with(assumptions.scenario().whole(Scalar.HORIZON_YEARS), OTHER_YEARS.stream());
    }

    private static List<Integer> with(int own, Stream<Integer> others) {
        TreeSet<Integer> all = new TreeSet<>(others.toList());
        all.add(own);
        return List.copyOf(all);
    }

    private static boolean works(Assumptions assumptions, int people) {
        Assumptions changed = assumptions.with(assumptions.scenario().with(Scalar.CREW_SIZE, people));
        return WorkingDay.leastLeftMinutes(changed) >= WorkingDay.LEAST_MINUTES;
    }

    /** Some numbers to pick from, in words. */
    static String choice(List<Integer> numbers) {
        int last = numbers.size() - 1;
        String head = String.join(
                ", ", numbers.subList(0, last).stream().map(String::valueOf).toList());
        return (head.isEmpty() ? "" : head + " or ") + numbers.get(last);
    }

    int whole(Scalar scalar) {
        return assumptions.scenario().whole(scalar);
    }

    double value(Scalar scalar) {
        return assumptions.scenario().value(scalar);
    }

    /** Whether the price is made from cost and overhead. */
    boolean chargesOverhead() {
        return pricing.way() == Pricing.Way.OVERHEAD_AND_NET;
    }

    String region(House house) {
        return assumptions.scenario().regionOf(house);
    }

    List<Wage> wages(String region) {
        return wages(assumptions, region);
    }

    private static List<Wage> wages(Assumptions assumptions, String region) {
        return Each.where(assumptions.wages(), wage -> wage.region().equals(region));
    }

    double usdPerPersonHour(String region) {
        return CrewRate.usdPerPersonHour(wages(region), whole(Scalar.CREW_SIZE)).value();
    }

    /** A number that holds, as formulas name it. */
    static String now(int row) {
        return CellSheet.cell(SHEET, row, NOW);
    }

    /** What an hour of a person costs in a region, as formulas name it. */
    String rate(String region) {
        return CellSheet.cell(SHEET, WAGES + 1 + regions.indexOf(region), RATE);
    }

    /** First row below the wages. */
    int end() {
        return WAGES + 1 + regions.size();
    }
}
