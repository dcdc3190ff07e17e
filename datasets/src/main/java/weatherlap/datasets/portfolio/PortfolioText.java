package weatherlap.datasets.portfolio;

import java.io.IOException;
import java.util.stream.Stream;
import weatherlap.datasets.table.CsvText;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Portfolio;

/**
 * Writes houses one after another as the three tables of a portfolio folder, with every column. What it writes reads back as the same
 * houses.
 */
public final class PortfolioText {
    private final Appendable houses;
    private final Appendable elevations;
    private final Appendable openings;

    /** Writes the header rows. */
    public PortfolioText(Appendable houses, Appendable elevations, Appendable openings) throws IOException {
        this.houses = houses;
        this.elevations = elevations;
        this.openings = openings;
        houses.append(CsvText.line(PortfolioTables.HOUSES.names()));
        elevations.append(CsvText.line(PortfolioTables.ELEVATIONS.names()));
        openings.append(CsvText.line(PortfolioTables.OPENINGS.names()));
    }

    /** Writes a whole portfolio. */
    public static void write(Portfolio portfolio, Appendable houses, Appendable elevations, Appendable openings)
            throws IOException {
        PortfolioText text = new PortfolioText(houses, elevations, openings);
        for (House house : portfolio.houses()) {
            text.add(house);
        }
    }

    public void add(House house) throws IOException {
        houses.append(line(house));
        for (Elevation elevation : house.elevations()) {
            elevations.append(line(house, elevation));
            for (Opening opening : elevation.openings()) {
                openings.append(line(house, elevation, opening));
            }
        }
    }

    private static String line(House house) {
        Stream<String> cells = Stream.of(
                house.id(),
                house.label(),
                Integer.toString(house.yearBuilt()),
                CsvText.cell(house.terrain()),
                CsvText.cell(house.cladding()),
                CsvText.cell(house.barrier()),
                Integer.toString(house.storeys()),
                house.region().orElse(""),
                CsvText.cell(house.leadTest()));
        return CsvText.line(Stream.concat(cells, PortfolioTables.jobCells(PortfolioTables.HOUSES, house.job()))
                .toList());
    }

    private static String line(House house, Elevation elevation) {
        return CsvText.line(
                house.id(),
                elevation.id(),
                CsvText.cell(elevation.bearingDeg()),
                CsvText.cell(elevation.widthFt()),
                CsvText.cell(elevation.eaveHeightFt()),
                CsvText.cell(elevation.overhangIn()),
                CsvText.cell(elevation.courseExposureIn()),
                CsvText.cell(elevation.panelLengthIn()),
                CsvText.cell(elevation.sidingCondition()),
                CsvText.cell(elevation.obstructionM()));
    }

    private static String line(House house, Elevation elevation, Opening opening) {
        Stream<String> measured = Stream.of(
                house.id(),
                elevation.id(),
                opening.id(),
                CsvText.cell(opening.place().room()),
                opening.place().roomId().orElse(""),
                CsvText.cell(opening.operation()),
                CsvText.cell(opening.newOperation()),
                Integer.toString(opening.units()),
                CsvText.cell(opening.frame().widthIn()),
                CsvText.cell(opening.frame().heightIn()),
                CsvText.cell(opening.place().leftIn()),
                CsvText.cell(opening.place().sillHeightIn()),
                CsvText.cell(opening.place().interiorSillIn()),
                CsvText.cell(opening.place().floorAreaFt2()),
                CsvText.cell(opening.frame().material()),
                CsvText.cell(opening.frame().condition()),
                CsvText.cell(opening.inside().finish()),
                Integer.toString(opening.inside().layers()),
                CsvText.cell(opening.inside().setbackIn()),
                CsvText.cell(opening.laps().head()),
                CsvText.cell(opening.laps().jamb()),
                CsvText.cell(opening.laps().sill()),
                CsvText.cell(opening.laps().stain()));
        return CsvText.line(Stream.of(
                        measured, readings(opening), PortfolioTables.jobCells(PortfolioTables.OPENINGS, opening.job()))
                .flatMap(cells -> cells)
                .toList());
    }

    private static Stream<String> readings(Opening opening) {
        return opening.readings()
                .map(r -> Stream.of(
                        CsvText.cell(r.widthTopIn()),
                        CsvText.cell(r.widthMiddleIn()),
                        CsvText.cell(r.widthBottomIn()),
                        CsvText.cell(r.heightLeftIn()),
                        CsvText.cell(r.heightMiddleIn()),
                        CsvText.cell(r.heightRightIn()),
                        CsvText.cell(r.diagonalRisingIn()),
                        CsvText.cell(r.diagonalFallingIn())))
                .orElseGet(() -> Stream.generate(() -> "").limit(8));
    }
}
