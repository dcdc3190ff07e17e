package weatherlap.reports.jobs;

import java.util.List;
import weatherlap.datasets.table.Nearest;
import weatherlap.sim.house.House;

/** Finds the house that a sheet is for. */
final class OneHouse {
    private OneHouse() {}

    /**
     * @param id its key; empty: the only one
     * @throws BadInput where there is no such house, it has no window, or it would have to be guessed
     */
    static House of(List<House> houses, String id) {
        if (id.isEmpty() && houses.size() != 1) {
            throw new BadInput(List.of("--house ID is missing: the portfolio has " + houses.size() + " houses"
                    + (houses.isEmpty()
                            ? ""
                            : ", the first of them is " + houses.get(0).id())));
        }
        House found = houses.stream()
                .filter(house -> id.isEmpty() || house.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new BadInput(List.of("--house: the portfolio has no house \"" + id + "\""
                        + Nearest.to(id, houses.stream().map(House::id).toList())
                                .map(near -> "; the nearest is \"" + near + "\"")
                                .orElseGet(() -> first(houses)))));
        if (found.openingCount() == 0) {
            throw new BadInput(List.of("--house: " + found.id() + " has no window; give it rows in openings.csv"));
        }
        return found;
    }

    private static String first(List<House> houses) {
        return houses.isEmpty()
                ? ""
                : "; the first of " + houses.size() + " is " + houses.get(0).id();
    }
}
