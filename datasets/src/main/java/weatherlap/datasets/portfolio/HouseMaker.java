package weatherlap.datasets.portfolio;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.sim.Each;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.house.Terrain;
import weatherlap.sim.method.Method;

/** Puts one house together from its rows and reports what does not go together. */
final class HouseMaker {
    /** Siding panels cover more, in. */
    private static final double LEAST_PANEL_IN = 6;

    private final int thisYear;
    private final boolean amongOthers;
    private final Optional<FitCheck> fit;
    private final Problems problems;
    /** The methods that a cladding leaves open. */
    private final Map<Cladding, List<Method>> open = new EnumMap<>(Cladding.class);

    /**
     * @param thisYear no house is built after it
     * @param amongOthers whether the portfolio has several houses, so that the example of the template is none of them
     * @param fit empty: without assumptions to hold it against
     */
    HouseMaker(int thisYear, boolean amongOthers, Optional<FitCheck> fit, Problems problems) {
        this.thisYear = thisYear;
        this.amongOthers = amongOthers;
        this.fit = fit;
        this.problems = problems;
    }

    /** The house; empty where any of its rows is unsound or does not fit the others. */
    Optional<House> make(HouseRows rows) {
        int before = problems.errorCount();
        checkYear(rows.house());
        if (amongOthers && TemplatePortfolio.isExample(rows.house())) {
            rows.house()
                    .warning(
                            problems,
                            HouseId.COLUMN,
                            "this is the example house; it counts as one of yours until you delete its rows");
        }
        fit.ifPresent(check -> check.checkRegion(rows.house(), problems));
        RoomCheck.check(rows.openings(), problems);
        List<Elevation> elevations = elevations(rows);
        if (rows.elevations().isEmpty()) {
            rows.house().error(problems, "house_id", "this house has no row in elevations.csv");
        } else if (rows.openings().isEmpty()) {
            rows.house().error(problems, "house_id", "this house has no row in openings.csv");
        }
        boolean sound = rows.house().isSound()
                && rows.elevations().stream().allMatch(Row::isSound)
                && rows.openings().stream().allMatch(Row::isSound)
                && problems.errorCount() == before;
        return sound ? Optional.of(house(rows, elevations)) : Optional.empty();
    }

    private void checkYear(Row house) {
        if (house.isSound() && house.whole("year_built") > thisYear) {
            house.error(
                    problems,
                    "year_built",
                    Quoted.of(house.text("year_built")) + " is in the future (1700 to " + thisYear
                            + "); the nearest is " + thisYear);
        }
    }

    private List<Elevation> elevations(HouseRows rows) {
        Map<String, List<Row>> openings =
                rows.openings().stream().collect(Collectors.groupingBy(row -> row.text("elevation_id")));
        List<Method> methods = rows.house().isSound()
                ? open.computeIfAbsent(rows.house().word("cladding", Cladding.class), Method::openTo)
                : List.of(Method.values());
        SwappedSizes.checkTwins(Each.where(rows.openings(), Row::isSound), problems);
        List<Elevation> elevations = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Row row : rows.elevations()) {
            String id = row.text("elevation_id");
            if (row.isSound() && seen.add(id)) {
                List<Row> own = Each.where(openings.getOrDefault(id, List.of()), Row::isSound);
                check(row, own, rows.house());
                elevations.add(elevation(row, own, methods));
            }
        }
        return elevations;
    }

    private void check(Row wall, List<Row> openings, Row house) {
        if (house.isSound()) {
            checkSiding(wall, house.word("cladding", Cladding.class));
            warnOfCourses(wall, house.word("cladding", Cladding.class));
        }
        WallCheck.check(wall, openings, problems);
        SwappedSizes.checkHeads(openings, problems);
        if (house.isSound()) {
            if (house.word("barrier", Barrier.class, Barrier.UNKNOWN) == Barrier.NONE) {
                openings.forEach(opening -> warnOfBarrier(house, opening));
            }
            UsualValues.checkWall(wall, house.whole("storeys"), problems);
        }
    }

    /** A lap of the barrier that somebody saw, where the house is said to have none. */
    private void warnOfBarrier(Row house, Row opening) {
        for (String lap : List.of("head_lap", "jamb_lap", "sill_lap")) {
            if (List.of("shingled", "reversed").contains(opening.text(lap))) {
                opening.warning(
                        problems,
                        lap,
                        Quoted.of(opening.text(lap)) + " does not go with the barrier \"none\" of " + house.file() + ":"
                                + house.line()
                                + ":barrier; the program goes by a barrier of unknown kind");
            }
        }
    }

    private void checkSiding(Row row, Cladding cladding) {
        if (cladding.inCourses()) {
            String needs = "is empty; the cladding " + cladding.name().toLowerCase(Locale.ROOT) + " needs it";
            if (!row.has("course_exposure_in")) {
                row.error(problems, "course_exposure_in", needs + ", such as 8 for a panel of two courses of 4");
            }
            if (!row.has("panel_length_in")) {
                row.error(problems, "panel_length_in", needs + ", such as 150 for a panel of 12 ft 6 in.");
            }
        }
    }

    /** Panels are made of two courses or more of 4 or 5 in. and come down in one piece: common practice. */
    private void warnOfCourses(Row row, Cladding cladding) {
        double height = row.optionalNumber("course_exposure_in").orElse(LEAST_PANEL_IN);
        if (cladding.hungInPanels() && height < LEAST_PANEL_IN) {
            row.warning(
                    problems,
                    "course_exposure_in",
                    CsvText.cell(height)
                            + " inches is low for a siding panel; give what a whole panel covers, such as 8 for two"
                            + " courses of 4 (this way nearly twice as many panels are counted)");
        }
    }

    private Elevation elevation(Row row, List<Row> openings, List<Method> open) {
        return new Elevation(
                row.text("elevation_id"),
                row.number("bearing_deg"),
                row.number("width_ft"),
                row.number("eave_height_ft"),
                row.number("overhang_in"),
                row.optionalNumber("course_exposure_in"),
                row.optionalNumber("panel_length_in"),
                row.word("siding_condition", SidingCondition.class, SidingCondition.UNKNOWN),
                row.optionalNumber("obstruction_m"),
                Each.of(openings, opening -> opening(opening, open)));
    }

    private Opening opening(Row row, List<Method> open) {
        Opening opening = OpeningMaker.make(row, problems);
        UsualValues.checkOpening(row, problems);
        if (fit.isPresent()) {
            fit.get().checkUnits(row, opening, open, problems);
        }
        return opening;
    }

    private static House house(HouseRows rows, List<Elevation> elevations) {
        Row row = rows.house();
        return new House(
                row.text("house_id"),
                row.text("label"),
                row.whole("year_built"),
                row.word("terrain", Terrain.class),
                row.word("cladding", Cladding.class),
                row.word("barrier", Barrier.class, Barrier.UNKNOWN),
                row.whole("storeys"),
                Optional.of(row.text("region")).filter(region -> !region.isEmpty()),
                row.word("lead_test", LeadTest.class, LeadTest.UNKNOWN),
                elevations,
                job(rows));
    }

    /** The house's own, and the notes of its walls, each with the name of its wall. */
    private static Map<String, String> job(HouseRows rows) {
        Map<String, String> job = PortfolioTables.jobOf(PortfolioTables.HOUSES, rows.house());
        rows.elevations().forEach(wall -> PortfolioTables.notesOf(PortfolioTables.ELEVATIONS, wall)
                .forEach((name, note) -> job.put(name + ", " + wall.text("elevation_id"), note)));
        return job;
    }
}
