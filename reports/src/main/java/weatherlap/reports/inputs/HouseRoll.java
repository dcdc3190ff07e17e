package weatherlap.reports.inputs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.datasets.portfolio.PortfolioScan;
import weatherlap.datasets.table.Nearest;
import weatherlap.sim.house.House;

/** The ids of many houses, of which no more is kept than a message needs. */
public final class HouseRoll {
    private final String wanted;
    private int count;
    private String first = "";
    private Optional<String> nearest = Optional.empty();

    /** @param wanted the id that was asked for */
    private HouseRoll(String wanted) {
        this.wanted = wanted;
    }

    public static HouseRoll of(List<House> houses, String wanted) {
        HouseRoll roll = new HouseRoll(wanted);
        houses.forEach(house -> roll.add(house.id()));
        return roll;
    }

    /** Those of the folder of a portfolio. */
    public static HouseRoll of(Path portfolio, String wanted) {
        HouseRoll roll = new HouseRoll(wanted);
        PortfolioScan.forEachHouse(portfolio, id -> {
            roll.add(id);
            return true;
        });
        return roll;
    }

    private void add(String id) {
        if (count++ == 0) {
            first = id;
        }
        nearest = Nearest.to(
                wanted, Stream.concat(nearest.stream(), Stream.of(id)).toList());
    }

    int count() {
        return count;
    }

    /** Empty where there is no house. */
    public String first() {
        return first;
    }

    public BadInput missing() {
        return new BadInput(List.of("--house ID is missing; there are " + count + " houses"
                + (count == 0 ? "" : ", the first of them is " + first)));
    }

    public BadInput unknown() {
        String hint = nearest.map(near -> "; did you mean \"" + near + "\"?")
                .orElse(count == 0 ? "" : "; the first of " + count + " is " + first);
        return new BadInput(List.of("--house: there is no house \"" + wanted + "\"" + hint));
    }
}
