package weatherlap.sim.made;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * An invented window for tests, changed step by step; a step changes this one. It begins as a double hung of 36 × 60 in. in a sound aluminum
 * frame of a living room, 24 in. from the left and 36 in. over grade, of whose laps nobody knows.
 */
public final class MadeOpening {
    private String id;
    private Operation operation = Operation.DOUBLE_HUNG;
    private Operation newOperation = Operation.DOUBLE_HUNG;
    private int units = 1;
    private OldFrame frame = new OldFrame(36, 60, FrameMaterial.ALUMINUM, FrameCondition.SOUND);
    private Place place =
            new Place(24, 36, Room.LIVING, Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    private Inside inside = new Inside(InteriorReturn.DRYWALL, 1, OptionalDouble.empty());
    private Laps laps = Laps.UNSEEN;
    private Optional<Readings> readings = Optional.empty();
    private Map<String, String> job = Map.of();

    private MadeOpening(String id) {
        this.id = id;
    }

    public static MadeOpening of(String id) {
        return new MadeOpening(id);
    }

    /** Begins as this one. */
    public static MadeOpening like(Opening other) {
        MadeOpening made = new MadeOpening(other.id());
        made.operation = other.operation();
        made.newOperation = other.newOperation();
        made.units = other.units();
        made.frame = other.frame();
        made.place = other.place();
        made.inside = other.inside();
        made.laps = other.laps();
        made.readings = other.readings();
        made.job = other.job();
        return made;
    }

    public MadeOpening id(String other) {
        id = other;
        return this;
    }

    public MadeOpening opens(Operation from, Operation to) {
        operation = from;
        newOperation = to;
        return this;
    }

    public MadeOpening mulled(int count) {
        units = count;
        return this;
    }

    public MadeOpening size(double widthIn, double heightIn) {
        frame = new OldFrame(widthIn, heightIn, frame.material(), frame.condition());
        return this;
    }

    public MadeOpening of(FrameMaterial material) {
        frame = new OldFrame(frame.widthIn(), frame.heightIn(), material, frame.condition());
        return this;
    }

    public MadeOpening frame(FrameCondition condition) {
        frame = new OldFrame(frame.widthIn(), frame.heightIn(), frame.material(), condition);
        return this;
    }

    /** From the left corner of the wall and over grade, in. */
    public MadeOpening at(double leftIn, double sillHeightIn) {
        place = new Place(
                leftIn, sillHeightIn, place.room(), place.roomId(), place.floorAreaFt2(), place.interiorSillIn());
        return this;
    }

    public MadeOpening in(Room room) {
        place = new Place(
                place.leftIn(),
                place.sillHeightIn(),
                room,
                place.roomId(),
                place.floorAreaFt2(),
                place.interiorSillIn());
        return this;
    }

    /** In a room of this floor area, ft², the clear opening so far over its floor, in. */
    public MadeOpening in(Room room, double interiorSillIn, double floorAreaFt2) {
        place = new Place(
                place.leftIn(),
                place.sillHeightIn(),
                room,
                place.roomId(),
                OptionalDouble.of(floorAreaFt2),
                OptionalDouble.of(interiorSillIn));
        return this;
    }

    public MadeOpening layers(int count) {
        inside = new Inside(inside.finish(), count, inside.setbackIn());
        return this;
    }

    public MadeOpening laps(Lap head, Lap jamb, Lap sill, Sighting stain) {
        laps = new Laps(head, jamb, sill, stain);
        return this;
    }

    /** All laps seen alike. */
    public MadeOpening laps(Lap all) {
        return laps(all, all, all, laps.stain());
    }

    public MadeOpening read(Readings taken) {
        readings = Optional.of(taken);
        return this;
    }

    public Opening opening() {
        return new Opening(id, operation, newOperation, units, frame, place, inside, laps, readings, job);
    }
}
