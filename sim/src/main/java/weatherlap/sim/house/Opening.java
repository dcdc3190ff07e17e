package weatherlap.sim.house;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import weatherlap.sim.Check;

/**
 * One window opening as measured.
 *
 * @param id key within the elevation
 * @param operation how the existing unit opens
 * @param newOperation how the new one will
 * @param units lites mulled side by side in this opening, 1 to 4
 * @param readings the tape readings an order is made from; empty: the frame size stands for them
 * @param job what the crew is told of the window, by column, as somebody wrote it; untrusted text
 */
public record Opening(
        String id,
        Operation operation,
        Operation newOperation,
        int units,
        OldFrame frame,
        Place place,
        Inside inside,
        Laps laps,
        Optional<Readings> readings,
        Map<String, String> job) {
    public Opening {
        Check.text("opening id", id);
        Check.within("units", units, 1, 4);
        job = Collections.unmodifiableMap(new LinkedHashMap<>(job));
    }

    /** The same elsewhere. */
    public Opening at(Place other) {
        return new Opening(id, operation, newOperation, units, frame, other, inside, laps, readings, job);
    }

    /** Right edge of the frame from the wall's left corner, in. */
    public double rightIn() {
        return place.leftIn() + frame.widthIn();
    }

    /** Top of the frame over grade, in. */
    public double headHeightIn() {
        return place.sillHeightIn() + frame.heightIn();
    }
}
