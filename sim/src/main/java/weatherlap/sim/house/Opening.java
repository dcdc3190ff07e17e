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

    /** What the units of an opening, old and new, hang on where no readings were taken; the condition of the frame is no part of it. */
    public record Kind(
            double widthIn,
            double heightIn,
            FrameMaterial material,
            Operation operation,
            Operation newOperation,
            int units) {
        @Override
        public boolean equals(Object other) { // as a record's, which costs several times as much
            return other instanceof Kind kind
                    && widthIn == kind.widthIn
                    && heightIn == kind.heightIn
                    && material == kind.material
                    && operation == kind.operation
                    && newOperation == kind.newOperation
                    && units == kind.units;
        }

        @Override
        public int hashCode() {
            int sixteenths = 4096 * (int) (16 * widthIn) + (int) (16 * heightIn);
            int opens = 8 * operation.ordinal() + newOperation.ordinal();
            return 31 * (31 * sixteenths + opens) + 4 * material.ordinal() + units;
        }
    }

    public Kind kind() {
        return new Kind(frame.widthIn(), frame.heightIn(), frame.material(), operation, newOperation, units);
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
