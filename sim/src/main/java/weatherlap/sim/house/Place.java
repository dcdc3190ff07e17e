package weatherlap.sim.house;

import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.sim.Check;

/**
 * Where an opening stands, on its wall and in its room.
 *
 * @param leftIn left edge of the frame from the wall's left corner, seen from outside, in., 0 or more
 * @param sillHeightIn bottom of the frame over grade, in., 0 or more
 * @param room what the room is used as
 * @param roomId key, within the house, of the room that openings share; empty: unknown
 * @param floorAreaFt2 of the room, ft²; empty: not checked
 * @param interiorSillIn bottom of the clear opening over the room's floor, in.; empty: unknown
 */
public record Place(
        double leftIn,
        double sillHeightIn,
        Room room,
        Optional<String> roomId,
        OptionalDouble floorAreaFt2,
        OptionalDouble interiorSillIn) {
    public Place {
        Check.notNegative("left edge", leftIn);
        Check.notNegative("sill height", sillHeightIn);
    }

    /** The same in a room of this key and floor area, ft². */
    public Place inRoom(String key, OptionalDouble areaFt2) {
        return new Place(leftIn, sillHeightIn, room, Optional.of(key), areaFt2, interiorSillIn);
    }
}
