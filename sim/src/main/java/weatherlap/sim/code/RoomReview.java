package weatherlap.sim.code;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import weatherlap.sim.code.ResidentialCode.Unit;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Room;

/**
 * The rules asked of one room.
 *
 * <p>A bedroom needs one way out: the room stands as its best opening does. The rule hangs on the opening that most methods keep as a way
 * out, then one that is a way out today, then the largest. What a method keeps, any method that opens farther keeps too; so whoever keeps
 * this one keeps the room, whatever becomes of the others.
 *
 * @param openings by place in the house
 * @param wayOut place of the opening that the escape rule hangs on
 */
public record RoomReview(List<Integer> openings, int wayOut) {

    /** @param all openings of the house, a list a method */
    public static RoomReview of(List<Integer> openings, Collection<List<OpeningGeometry>> all) {
        Comparator<Integer> byMethods = Comparator.comparingInt(o -> all.stream()
                .mapToInt(own -> verdict(own.get(o), Unit::after).ordinal())
                .sum());
        List<OpeningGeometry> any = all.iterator().next();
        return new RoomReview(
                openings,
                openings.stream()
                        .min(byMethods
                                .thenComparing(o -> verdict(any.get(o), Unit::today))
                                .thenComparing(o -> -any.get(o).existingClear().areaFt2()))
                        .orElseThrow());
    }

    /** @param own openings of the house under one method */
    public Stream<RoomChange> changes(List<OpeningGeometry> own, boolean relief) {
        List<OpeningGeometry> room = openings.stream().map(own::get).toList();
        Optional<String> id = room.get(0).opening().place().roomId();
        return Stream.concat(
                escape(room, own.get(wayOut), relief)
                        .map(change -> new RoomChange(id, openings, List.of(wayOut), change))
                        .stream(),
                lightAndAir(room).map(change -> new RoomChange(id, openings, openings, change)));
    }

    private static Optional<CodeChange> escape(List<OpeningGeometry> room, OpeningGeometry wayOut, boolean relief) {
        return room.stream().anyMatch(RoomReview::sleptIn)
                ? Optional.of(new CodeChange(
                        best(room, wayOut, Unit::today),
                        best(room, wayOut, Unit::after),
                        relief && ResidentialCode.mayBeRelieved(wayOut)))
                : Optional.empty();
    }

    private static boolean sleptIn(OpeningGeometry geometry) {
        Room kind = geometry.opening().place().room();
        return kind == Room.BEDROOM || kind == Room.BASEMENT;
    }

    /** The best of the room's, that of the way out where others are no better. */
    private static CodeCheck best(
            List<OpeningGeometry> room, OpeningGeometry wayOut, Function<OpeningGeometry, Unit> side) {
        return Stream.concat(Stream.of(wayOut), room.stream())
                .map(geometry -> ResidentialCode.escape(geometry.opening(), side.apply(geometry)))
                .min(Comparator.comparing(CodeCheck::verdict))
                .orElseThrow();
    }

    private static CodeCheck.Verdict verdict(OpeningGeometry geometry, Function<OpeningGeometry, Unit> side) {
        return ResidentialCode.escape(geometry.opening(), side.apply(geometry)).verdict();
    }

    /** Of a habitable room that has an id and a floor: R303.1 asks nothing of a stair, and R303.3 asks otherwise of a bath. */
    private static Stream<CodeChange> lightAndAir(List<OpeningGeometry> room) {
        Opening first = room.get(0).opening();
        OptionalDouble floorFt2 = room.stream()
                .flatMapToDouble(geometry -> geometry.opening().place().floorAreaFt2().stream())
                .findFirst();
        if (first.place().roomId().isEmpty()
                || floorFt2.isEmpty()
                || first.place().room() == Room.BATH
                || first.place().room() == Room.STAIR) {
            return Stream.empty();
        }
        double floor = floorFt2.getAsDouble();
        return Stream.of(
                change(room, unit -> unit.glass().glassFt2(), glass -> ResidentialCode.light(glass, floor)),
                change(room, Unit::clearFt2, open -> ResidentialCode.ventilation(open, floor)));
    }

    private static CodeChange change(
            List<OpeningGeometry> room, ToDoubleFunction<Unit> area, Function<Double, CodeCheck> rule) {
        double today = room.stream().map(Unit::today).mapToDouble(area).sum();
        double after = room.stream().map(Unit::after).mapToDouble(area).sum();
        return new CodeChange(rule.apply(today), rule.apply(after), false);
    }
}
