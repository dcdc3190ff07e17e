package weatherlap.datasets.portfolio;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.sim.Each;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Inside;
import weatherlap.sim.house.InteriorReturn;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Laps;
import weatherlap.sim.house.OldFrame;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Place;
import weatherlap.sim.house.Readings;
import weatherlap.sim.house.Room;
import weatherlap.sim.house.Sighting;

/**
 * Makes an opening of a sound row and warns of what is doubtful in it. A reading that was left empty is unknown: evidence for nothing.
 */
final class OpeningMaker {
    /** Readings that differ from the frame by more are probably of another window. */
    private static final double DOUBTFUL_IN = 4;

    private OpeningMaker() {}

    static Opening make(Row row, Problems problems) {
        Opening opening = opening(row, problems);
        warn(row, opening, problems);
        return opening;
    }

    private static Opening opening(Row row, Problems problems) {
        Operation operation = row.word("operation", Operation.class);
        return new Opening(
                row.text("opening_id"),
                operation,
                row.word("new_operation", Operation.class, operation),
                row.whole("units", 1),
                new OldFrame(
                        row.number("frame_width_in"),
                        row.number("frame_height_in"),
                        row.word("existing_material", FrameMaterial.class),
                        row.word("frame_condition", FrameCondition.class, FrameCondition.UNKNOWN)),
                place(row),
                new Inside(
                        row.word("interior_return", InteriorReturn.class),
                        row.whole("return_layers"),
                        row.optionalNumber("setback_in")),
                new Laps(
                        row.word("head_lap", Lap.class, Lap.UNKNOWN),
                        row.word("jamb_lap", Lap.class, Lap.UNKNOWN),
                        row.word("sill_lap", Lap.class, Lap.UNKNOWN),
                        row.word("stain", Sighting.class, Sighting.UNKNOWN)),
                readings(row, problems),
                PortfolioTables.jobOf(PortfolioTables.OPENINGS, row));
    }

    private static Place place(Row row) {
        return new Place(
                row.number("left_in"),
                row.number("sill_height_in"),
                row.word("room", Room.class),
                Optional.of(row.text("room_id")).filter(id -> !id.isEmpty()),
                row.optionalNumber("floor_area_ft2"),
                row.optionalNumber("interior_sill_in"));
    }

    private static Optional<Readings> readings(Row row, Problems problems) {
        List<String> missing = Each.where(PortfolioTables.READINGS, name -> !row.has(name));
        OptionalDouble rising = row.optionalNumber("diagonal_rising_in");
        OptionalDouble falling = row.optionalNumber("diagonal_falling_in");
        if (rising.isPresent() != falling.isPresent()) {
            String absent = rising.isPresent() ? "diagonal_falling_in" : "diagonal_rising_in";
            row.error(problems, absent, "is empty; give both diagonals or neither");
        }
        if (!missing.isEmpty()) {
            if (missing.size() < PortfolioTables.READINGS.size() || rising.isPresent()) {
                row.error(problems, missing.get(0), "is empty; give all six width and height readings or none");
            }
            return Optional.empty();
        }
        return Optional.of(new Readings(
                row.number("width_top_in"),
                row.number("width_middle_in"),
                row.number("width_bottom_in"),
                row.number("height_left_in"),
                row.number("height_middle_in"),
                row.number("height_right_in"),
                rising,
                falling));
    }

    private static void warn(Row row, Opening opening, Problems problems) {
        if (opening.place().room() == Room.BEDROOM) {
            if (opening.operation() == Operation.PICTURE) {
                row.warning(problems, "operation", "a picture window in a bedroom is no way out in a fire");
            }
            if (opening.place().interiorSillIn().isEmpty()) {
                row.warning(
                        problems,
                        "interior_sill_in",
                        "is empty, so nothing says whether this bedroom sill is low enough for a way out");
            }
        }
        opening.readings().ifPresent(readings -> {
            warnOfSize(
                    row,
                    problems,
                    "width_top_in",
                    readings.smallestWidthIn(),
                    opening.frame().widthIn());
            warnOfSize(
                    row,
                    problems,
                    "height_left_in",
                    readings.smallestHeightIn(),
                    opening.frame().heightIn());
        });
    }

    private static void warnOfSize(Row row, Problems problems, String column, double reading, double frame) {
        if (Math.abs(reading - frame) > DOUBTFUL_IN) {
            row.warning(
                    problems,
                    column,
                    "the smallest reading (" + CsvText.cell(reading) + ") is far from the frame (" + CsvText.cell(frame)
                            + "); is it the same window?");
        }
    }
}
