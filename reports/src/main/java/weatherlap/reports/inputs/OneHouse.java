package weatherlap.reports.inputs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.reports.output.Messages;
import weatherlap.sim.house.House;

/**
 * The house that a sheet is for, and what it rests on.
 *
 * @param inputs of a large portfolio, this house alone
 */
public record OneHouse(Inputs inputs, House house) {
    /**
     * @param id its key; empty: the only one
     * @throws BadInput with every problem of the tables, or where there is no such house or it would have to be guessed
     */
    public static OneHouse read(InputPaths paths, String id, Messages messages) {
        Optional<Path> large = LargePortfolio.in(paths);
        if (large.isPresent() && id.isEmpty()) {
            HouseRoll roll = HouseRoll.of(large.get(), id);
            if (roll.count() != 1) {
                throw roll.missing();
            }
            return read(paths, roll.first(), messages);
        }
        if (large.isPresent()) {
            return of(readAlone(paths, id, messages), id, houses -> HouseRoll.of(large.get(), id));
        }
        return of(Inputs.read(paths), id, houses -> HouseRoll.of(houses, id));
    }

    /** Everything but the rows of other houses. */
    public static Inputs readAlone(InputPaths paths, String id, Messages messages) {
        messages.note("there are many houses, so only the rows of house " + id + " are read and checked");
        return Inputs.read(paths, (folder, assumptions) -> Portfolios.readHouse(folder, id, assumptions));
    }

    private static OneHouse of(Inputs inputs, String id, Function<List<House>, HouseRoll> roll) {
        List<House> houses = inputs.portfolio().houses();
        if (id.isEmpty() && houses.size() != 1) {
            throw roll.apply(houses).missing();
        }
        return houses.stream()
                .filter(house -> id.isEmpty() || house.id().equals(id))
                .findFirst()
                .map(house -> new OneHouse(inputs, house))
                .orElseThrow(() -> roll.apply(houses).unknown());
    }
}
