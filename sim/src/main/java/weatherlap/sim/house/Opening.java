package weatherlap.sim.house;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import weatherlap.sim.Check;

/**
 * One window opening as measured.
 *
 * @param id key within the elevation
 * @param operation how the existing unit opens
 * @param newOperation how the new one will
 * @param units lites mulled side by side in this opening, 1 to 4
 * @param frameWidthIn existing frame, outside to outside, in., 8 to 144
 * @param frameHeightIn likewise
 * @param leftIn left edge from the wall's left corner, seen from outside, in.
 * @param sillHeightIn bottom of the frame over grade, in.
 * @param interiorSillIn bottom of the clear opening over the room's floor, in.; empty: unknown
 * @param floorAreaFt2 of the room, ft²; empty: not checked
 * @param returnLayers layers of the interior return to cut back, 1 to 3
 * @param setbackIn how far the new frame stands deeper into the room than the old, in., 0 to 6; empty: the scenario's
 * @param readings the tape readings an order is made from; empty: the frame size stands for them
 * @param roomId key, within the house, of the room that openings share; empty: unknown
 * @param job what the crew is told of the window, by column, as somebody wrote it; untrusted text
 */
public record Opening(
        String id,
        Room room,
        Operation operation,
        Operation newOperation,
        int units,
        double frameWidthIn,
        double frameHeightIn,
        double leftIn,
        double sillHeightIn,
        OptionalDouble interiorSillIn,
        OptionalDouble floorAreaFt2,
        FrameMaterial existingMaterial,
        FrameCondition frameCondition,
        InteriorReturn interiorReturn,
        int returnLayers,
        OptionalDouble setbackIn,
        Lap headLap,
        Lap jambLap,
        Lap sillLap,
        Sighting stain,
        Optional<Readings> readings,
        Optional<String> roomId,
        Map<String, String> job) {
    public Opening {
        Check.text("opening id", id);
        Check.within("units", units, 1, 4);
        Check.within("frame width", frameWidthIn, 8, 144);
        Check.within("frame height", frameHeightIn, 8, 144);
        Check.notNegative("left edge", leftIn);
        Check.notNegative("sill height", sillHeightIn);
        Check.within("return layers", returnLayers, 1, 3);
        job = Collections.unmodifiableMap(new LinkedHashMap<>(job));
    }

    /** An opening of which nobody says with which others it shares a room. */
    public Opening(
            String id,
            Room room,
            Operation operation,
            Operation newOperation,
            int units,
            double frameWidthIn,
            double frameHeightIn,
            double leftIn,
            double sillHeightIn,
            OptionalDouble interiorSillIn,
            OptionalDouble floorAreaFt2,
            FrameMaterial existingMaterial,
            FrameCondition frameCondition,
            InteriorReturn interiorReturn,
            int returnLayers,
            OptionalDouble setbackIn,
            Lap headLap,
            Lap jambLap,
            Lap sillLap,
            Sighting stain,
            Optional<Readings> readings) {
        this(
                id,
                room,
                operation,
                newOperation,
                units,
                frameWidthIn,
                frameHeightIn,
                leftIn,
                sillHeightIn,
                interiorSillIn,
                floorAreaFt2,
                existingMaterial,
                frameCondition,
                interiorReturn,
                returnLayers,
                setbackIn,
                headLap,
                jambLap,
                sillLap,
                stain,
                readings,
                Optional.empty(),
                Map.of());
    }

    /** The same in a room of this key and floor area, ft². */
    public Opening inRoom(String key, OptionalDouble areaFt2) {
        return new Opening(
                id,
                room,
                operation,
                newOperation,
                units,
                frameWidthIn,
                frameHeightIn,
                leftIn,
                sillHeightIn,
                interiorSillIn,
                areaFt2,
                existingMaterial,
                frameCondition,
                interiorReturn,
                returnLayers,
                setbackIn,
                headLap,
                jambLap,
                sillLap,
                stain,
                readings,
                Optional.of(key),
                job);
    }

    /** Whether somebody saw a lap that only a barrier can have, right or wrong. */
    public boolean showsBarrier() {
        return Stream.of(headLap, jambLap, sillLap).anyMatch(lap -> lap == Lap.SHINGLED || lap == Lap.REVERSED);
    }

    public double rightIn() {
        return leftIn + frameWidthIn;
    }

    public double headHeightIn() {
        return sillHeightIn + frameHeightIn;
    }

    public double frameAreaIn2() {
        return frameWidthIn * frameHeightIn;
    }
}
