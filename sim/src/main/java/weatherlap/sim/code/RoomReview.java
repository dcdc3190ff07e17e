package weatherlap.sim.code;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
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
 * @param escape today; empty where nobody sleeps in it
 * @param lightAndAir today, rules in their order; none where they are not asked
 */
record RoomReview(List<Integer> openings, int wayOut, Optional<CodeCheck> escape, List<CodeCheck> lightAndAir) {
    RoomReview {
        openings = List.copyOf(openings);
    }

    /** @param all openings of the house, a list a method */
    static RoomReview of(List<Integer> openings, Collection<List<OpeningGeometry>> all) {
        int wayOut = openings.size() == 1
                ? openings.get(0)
                : Collections.min(Each.of(openings, o -> Candidate.of(o, all)), Candidate.BEST_FIRST)
                        .opening();
        List<OpeningGeometry> any = all.iterator().next();
        List<OpeningGeometry> room = Each.of(openings, any::get);
        return new RoomReview(
                openings,
                wayOut,
                Each.any(room, RoomReview::sleptIn)
                        ? Optional.of(best(room, any.get(wayOut), Unit::today))
                        : Optional.empty(),
                lightAndAir(room, Unit::today));
    }

    /**
     * An opening on which the escape rule may hang.
     *
     * @param afterwards what the methods make of it, added up, low is good
     */
    private record Candidate(int opening, int afterwards, CodeCheck.Verdict today, double areaFt2) {
        private static final Comparator<Candidate> BEST_FIRST = Comparator.comparingInt(Candidate::afterwards)
                .thenComparing(Candidate::today)
                .thenComparing(candidate -> -candidate.areaFt2);

        static Candidate of(int opening, Collection<List<OpeningGeometry>> all) {
            int afterwards = 0;
            for (List<OpeningGeometry> own : all) {
                afterwards += verdict(own.get(opening), Unit::after).ordinal();
            }
            OpeningGeometry any = all.iterator().next().get(opening);
            return new Candidate(
                    opening,
                    afterwards,
                    verdict(any, Unit::today),
                    any.existingClear().areaFt2());
        }
    }

    /** @param own openings of the house under one method */
    List<RoomChange> changes(List<OpeningGeometry> own, boolean relief) {
        List<OpeningGeometry> room = Each.of(openings, own::get);
        Optional<String> id = room.get(0).opening().place().roomId();
        List<RoomChange> changes = new ArrayList<>();
        if (escape.isPresent()) {
            OpeningGeometry out = own.get(wayOut);
            CodeChange change = new CodeChange(
                    escape.get(), best(room, out, Unit::after), relief && ResidentialCode.mayBeRelieved(out));
            changes.add(new RoomChange(id, openings, List.of(wayOut), change));
        }
        if (!lightAndAir.isEmpty()) {
            List<CodeCheck> after = lightAndAir(room, Unit::after);
            for (int rule = 0; rule < after.size(); rule++) {
                CodeChange change = new CodeChange(lightAndAir.get(rule), after.get(rule), false);
                changes.add(new RoomChange(id, openings, openings, change));
            }
        }
        return changes;
    }

    private static boolean sleptIn(OpeningGeometry geometry) {
        Room kind = geometry.opening().place().room();
        return kind == Room.BEDROOM || kind == Room.BASEMENT;
    }

    /** The best of the room's, that of the way out where others are no better. */
    private static CodeCheck best(
            List<OpeningGeometry> room, OpeningGeometry wayOut, Function<OpeningGeometry, Unit> side) {
        CodeCheck best = check(wayOut, side);
        for (OpeningGeometry geometry : room) {
            CodeCheck other = geometry == wayOut ? best : check(geometry, side);
            best = other.verdict().compareTo(best.verdict()) < 0 ? other : best;
        }
        return best;
    }

    private static CodeCheck check(OpeningGeometry geometry, Function<OpeningGeometry, Unit> side) {
        return ResidentialCode.escape(geometry.opening(), side.apply(geometry));
    }

    private static CodeCheck.Verdict verdict(OpeningGeometry geometry, Function<OpeningGeometry, Unit> side) {
        return check(geometry, side).verdict();
    }

    /** Of a habitable room that has an id and a floor: R303.1 asks nothing of a stair, and R303.3 asks otherwise of a bath. */
    private static List<CodeCheck> lightAndAir(List<OpeningGeometry> room, Function<OpeningGeometry, Unit> side) {
        Opening first = room.get(0).opening();
        OptionalDouble floorFt2 = floorFt2(room);
        if (first.place().roomId().isEmpty()
                || floorFt2.isEmpty()
                || first.place().room() == Room.BATH
                || first.place().room() == Room.STAIR) {
            return List.of();
        }
        double floor = floorFt2.getAsDouble();
        List<Unit> units = Each.of(room, side);
        return List.of(
                ResidentialCode.light(Sum.of(units, unit -> unit.glass().glassFt2()), floor),
                ResidentialCode.ventilation(Sum.of(units, Unit::clearFt2), floor));
    }

    /** As the first window says that says it. */
    private static OptionalDouble floorFt2(List<OpeningGeometry> room) {
        for (OpeningGeometry geometry : room) {
            if (geometry.opening().place().floorAreaFt2().isPresent()) {
                return geometry.opening().place().floorAreaFt2();
            }
        }
        return OptionalDouble.empty();
    }
}
