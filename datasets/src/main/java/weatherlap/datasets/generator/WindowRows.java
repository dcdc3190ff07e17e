package weatherlap.datasets.generator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.sim.Units;
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
import weatherlap.sim.house.Room;
import weatherlap.sim.house.Sighting;

/**
 * Windows in rows, a row for each storey, with heads in line.
 *
 * @param material of every existing frame of the house
 * @param operation of every window whose room does not ask for another
 * @param lapsSeen whether someone has looked at the laps
 */
record WindowRows(
        Draw draw, int storeys, int eaveHeightFt, FrameMaterial material, Operation operation, boolean lapsSeen) {
    /** The ground floor stands so far over grade, in. */
    private static final double GROUND_FLOOR_IN = 12;

    /** Heads stand so far over their floor, in., or this far below the ceiling where it is low. */
    private static final double HEAD_IN = 80;

    private static final double BELOW_CEILING_IN = 4;

    /** Wall left beside a window, both sides together, in. */
    private static final double WALL_BESIDE_IN = 8;

    /** The openings of a wall from the ground up and from left to right. */
    List<Opening> openings(String wall, int widthFt) {
        draw.know(Property.WALL, wall);
        List<Opening> openings = new ArrayList<>();
        for (int storey = 1; storey <= storeys; storey++) {
            draw.know(Property.FLOOR, storeys == 1 ? "only" : storey == 1 ? "ground" : "upper");
            addRow(openings, wall, Units.feetToInches(widthFt), storey);
        }
        return openings;
    }

    private void addRow(List<Opening> openings, String wall, double widthIn, int storey) {
        int before = openings.size();
        boolean sleepingWall = wall.equals("back") && storey == storeys;
        int windows = Math.max(draw.whole(Property.WINDOWS_IN_ROW), sleepingWall ? 1 : 0);
        int door = wall.equals("front") && storey == 1 ? windows / 2 : -1;
        int bays = windows + (door >= 0 ? 1 : 0);
        for (int bay = 0; bay < bays; bay++) {
            if (bay != door) {
                boolean bedroom = sleepingWall && bay == 0;
                add(openings, bay * widthIn / bays, widthIn / bays, storey, bedroom);
            }
        }
        inRooms(wall, openings, before);
    }

    /**
     * Two neighbors of a row that light the same kind of room are of one room, as large as the first of them has it; invented, as a second
     * window of a bedroom is.
     */
    private static void inRooms(String wall, List<Opening> openings, int from) {
        boolean paired = false;
        for (int w = from; w < openings.size(); w++) {
            paired = !paired
                    && w > from
                    && openings.get(w - 1).place().room()
                            == openings.get(w).place().room();
            Opening first = openings.get(paired ? w - 1 : w);
            Place place = openings.get(w).place();
            openings.set(
                    w,
                    openings.get(w)
                            .at(place.inRoom(
                                    wall + "-" + first.id(), first.place().floorAreaFt2())));
        }
    }

    private void add(List<Opening> openings, double bayLeftIn, double bayIn, int storey, boolean bedroom) {
        Room room = draw.word(Property.ROOM, Room.class);
        if (bedroom) {
            room = Room.BEDROOM;
            draw.know(Property.ROOM, "bedroom");
        }
        String[] size = draw.text(Property.WINDOW_SIZE).split("x", -1);
        double lite = Integer.parseInt(size[0]);
        double spaceIn = Math.min(bayIn - WALL_BESIDE_IN, 144);
        int units = Math.max(1, Math.min(draw.whole(Property.UNITS), (int) (spaceIn / lite)));
        double storeyIn = (Units.feetToInches(eaveHeightFt) - GROUND_FLOOR_IN) / storeys;
        double floorIn = GROUND_FLOOR_IN + (storey - 1) * storeyIn;
        double headIn = floorIn + Math.min(HEAD_IN, storeyIn - BELOW_CEILING_IN);
        double heightIn = Math.min(Integer.parseInt(size[1]), Math.floor(headIn - floorIn));
        double leftIn = Math.round(2 * (bayLeftIn + (bayIn - units * lite) / 2)) / 2.0;
        if (lite <= spaceIn) {
            double sillIn = Math.floor(headIn - heightIn);
            String id = "W" + (openings.size() + 1);
            openings.add(opening(id, room, units, units * lite, heightIn, leftIn, sillIn, sillIn - floorIn));
        }
    }

    private Opening opening(
            String id,
            Room room,
            int units,
            double widthIn,
            double heightIn,
            double leftIn,
            double sillIn,
            double overFloorIn) {
        Operation now = operation(room);
        String next = draw.text(Property.NEW_OPERATION);
        draw.know(Property.EXISTING_MATERIAL, material.name().toLowerCase(Locale.ROOT));
        Operation after = next.equals("same") ? now : Operation.valueOf(next.toUpperCase(Locale.ROOT));
        OptionalDouble insideSillIn =
                OptionalDouble.of(Math.max(0, Math.rint(overFloorIn) + draw.whole(Property.SILL_FRAME_IN)));
        Place place =
                new Place(leftIn, sillIn, room, Optional.empty(), draw.number(Property.FLOOR_AREA_FT2), insideSillIn);
        return new Opening(
                id,
                now,
                after,
                units,
                new OldFrame(widthIn, heightIn, material, draw.word(Property.FRAME_CONDITION, FrameCondition.class)),
                place,
                new Inside(
                        draw.word(Property.INTERIOR_RETURN, InteriorReturn.class),
                        draw.whole(Property.RETURN_LAYERS),
                        OptionalDouble.empty()),
                new Laps(
                        lap(Property.HEAD_LAP),
                        lap(Property.JAMB_LAP),
                        lap(Property.SILL_LAP),
                        draw.word(Property.STAIN, Sighting.class)),
                Optional.empty(),
                Map.of());
    }

    /** A bedroom window opens, whatever the mix says. */
    private Operation operation(Room room) {
        String drawn = draw.text(Property.OPERATION);
        Operation now = drawn.equals("house") ? operation : Operation.valueOf(drawn.toUpperCase(Locale.ROOT));
        Operation opens = room == Room.BEDROOM && now == Operation.PICTURE ? Operation.DOUBLE_HUNG : now;
        draw.know(Property.OPERATION, opens.name().toLowerCase(Locale.ROOT));
        return opens;
    }

    private Lap lap(Property joint) {
        return lapsSeen ? draw.word(joint, Lap.class) : Lap.UNKNOWN;
    }
}
