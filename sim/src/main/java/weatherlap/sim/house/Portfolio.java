package weatherlap.sim.house;

import java.util.List;

/** Houses to compare, in table order. */
public record Portfolio(List<House> houses) {
    public Portfolio {
        houses = List.copyOf(houses);
    }

    public int openingCount() {
        return houses.stream().mapToInt(House::openingCount).sum();
    }
}
