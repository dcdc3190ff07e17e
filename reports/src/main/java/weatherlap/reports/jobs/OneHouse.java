package weatherlap.reports.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.portfolio.PortfolioScan;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.sim.house.House;

/**
 * The house that a sheet is for, and what it rests on.
 *
 * @param inputs of a large portfolio, this house alone
 */
record OneHouse(Inputs inputs, House house) {
    /**
     * @param id its key; empty: the only one
     * @throws BadInput with every problem of the tables, or where there is no such house, it has no window, or it would have to be guessed
     */
    static OneHouse read(InputPaths paths, String id, Messages messages) {
        Optional<Path> large = LargePortfolio.in(paths);
        HouseRoll roll = new HouseRoll(id);
        if (large.isEmpty()) {
            Inputs inputs = Inputs.read(paths);
            inputs.portfolio().houses().forEach(house -> roll.add(house.id()));
            return of(inputs, id, roll);
        }
        if (!id.isEmpty()) {
            Inputs inputs = readAlone(paths, id, messages);
            if (inputs.portfolio().houses().isEmpty()) {
                enter(large.get(), roll);
            }
            return of(inputs, id, roll);
        }
        enter(large.get(), roll);
        if (roll.count() != 1) {
            throw roll.missing();
        }
        return of(readAlone(paths, roll.first(), messages), id, roll);
    }

    /** Everything but the rows of other houses. */
    static Inputs readAlone(InputPaths paths, String id, Messages messages) {
        messages.note("the portfolio is large: the rows of house " + id + " alone are read and checked");
        return Inputs.read(paths, (folder, assumptions) -> Portfolios.readHouse(folder, id, assumptions));
    }

    private static void enter(Path portfolio, HouseRoll roll) {
        PortfolioScan.forEachHouse(portfolio, id -> {
            roll.add(id);
            return true;
        });
    }

    private static OneHouse of(Inputs inputs, String id, HouseRoll roll) {
        List<House> houses = inputs.portfolio().houses();
        if (id.isEmpty() && houses.size() != 1) {
            throw roll.missing();
        }
        House found = houses.stream()
                .filter(house -> id.isEmpty() || house.id().equals(id))
                .findFirst()
                .orElseThrow(roll::unknown);
        if (found.openingCount() == 0) {
            throw new BadInput(List.of("--house: " + found.id() + " has no window; give it rows in openings.csv"));
        }
        return new OneHouse(inputs, found);
    }
}
