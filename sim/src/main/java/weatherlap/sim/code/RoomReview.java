package weatherlap.sim.code;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
import weatherlap.sim.code.ResidentialCode.Unit;
import weatherlap.sim.house.Place;
import weatherlap.sim.house.Room;

/**
 * The rules asked of one room.
 *
 * <p>A bedroom needs one way out: the room stands as its best opening does. The rule hangs on the opening that most methods keep as a way
 * out, then one that is a way out today, then the largest. What a method keeps, any method that opens farther keeps too; so whoever keeps
 * this one keeps the room, whatever becomes of the others.
 *
 * @param openings by place in the house
 * @param escape empty where nobody sleeps in it
 * @param lightAndAir today, rules in their order; none where they are not asked
 */
record RoomReview(List<Integer> openings, Optional<WayOut> escape, List<CodeCheck> lightAndAir) {
    RoomReview {
        openings = List.copyOf(openings);
    }

    /**
     * The opening that the escape rule hangs on.
     *
     * @param opening its place
     * @param unit that stands there
     * @param today what the rule says of the room
     */
    record WayOut(int opening, Unit unit, CodeCheck today) {}

    /**
     * @param today units of all openings of the house
     * @param after likewise, a list a method
     */
    static RoomReview of(List<Integer> openings, List<Unit> today, Collection<List<Unit>> after) {
        List<Unit> room = at(openings, today);
        return new RoomReview(
                openings,
                Each.any(room, RoomReview::sleptIn) ? Optional.of(wayOut(openings, today, after)) : Optional.empty(),
                lightAndAir(room));
    }

    private static List<Unit> at(List<Integer> openings, List<Unit> all) {
        List<Unit> some = new ArrayList<>(openings.size());
        for (int opening : openings) {
            some.add(all.get(opening));
        }
        return some;
    }

    private static WayOut wayOut(List<Integer> openings, List<Unit> today, Collection<List<Unit>> after) {
        int opening = openings.size() == 1
                ? openings.get(0)
                : Collections.min(Each.of(openings, o -> Candidate.of(o, today, after)), Candidate.BEST_FIRST)
                        .opening();
        return new WayOut(opening, today.get(opening), best(at(openings, today), today.get(opening)));
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

        static Candidate of(int opening, List<Unit> today, Collection<List<Unit>> after) {
            int afterwards = 0;
            for (List<Unit> units : after) {
                afterwards += units.get(opening).escape().verdict().ordinal();
            }
            Unit unit = today.get(opening);
            return new Candidate(
                    opening, afterwards, unit.escape().verdict(), unit.clear().areaFt2());
        }
    }

    /** @param after units of all openings of the house under one method */
    List<RoomChange> changes(List<Unit> after, boolean relief) {
        List<Unit> room = at(openings, after);
        Optional<String> id = room.get(0).opening().place().roomId();
        List<RoomChange> changes = new ArrayList<>(3);
        if (escape.isPresent()) {
            WayOut out = escape.get();
            Unit unit = after.get(out.opening());
            CodeChange change = new CodeChange(
                    out.today(), best(room, unit), relief && ResidentialCode.mayBeRelieved(out.unit(), unit));
            changes.add(new RoomChange(id, openings, List.of(out.opening()), change));
        }
        if (!lightAndAir.isEmpty()) {
            List<CodeCheck> checks = lightAndAir(room);
            for (int rule = 0; rule < checks.size(); rule++) {
                CodeChange change = new CodeChange(lightAndAir.get(rule), checks.get(rule), false);
                changes.add(new RoomChange(id, openings, openings, change));
            }
        }
        return changes;
    }

    private static boolean sleptIn(Unit unit) {
        Room kind = unit.opening().place().room();
        return kind == Room.BEDROOM || kind == Room.BASEMENT;
    }

    /** The best of the room's, that of the way out where others are no better. */
    private static CodeCheck best(List<Unit> room, Unit wayOut) {
        CodeCheck best = wayOut.escape();
        for (Unit unit : room) {
            CodeCheck other = unit.escape();
            best = other.verdict().compareTo(best.verdict()) < 0 ? other : best;
        }
        return best;
    }

    /** Of a habitable room that has an id and a floor: R303.1 asks nothing of a stair, and R303.3 asks otherwise of a bath. */
    private static List<CodeCheck> lightAndAir(List<Unit> room) {
        Place first = room.get(0).opening().place();
        OptionalDouble floorFt2 = floorFt2(room);
        if (first.roomId().isEmpty() || floorFt2.isEmpty() || first.room() == Room.BATH || first.room() == Room.STAIR) {
            return List.of();
        }
        double floor = floorFt2.getAsDouble();
        double[] glassFt2 = new double[room.size()];
        double[] openFt2 = new double[room.size()];
        for (int o = 0; o < glassFt2.length; o++) {
            glassFt2[o] = room.get(o).glass().glassFt2();
            openFt2[o] = room.get(o).clearFt2();
        }
        return List.of(
                ResidentialCode.light(Sum.of(glassFt2), floor), ResidentialCode.ventilation(Sum.of(openFt2), floor));
    }

    /** As the first window says that says it. */
    private static OptionalDouble floorFt2(List<Unit> room) {
        for (Unit unit : room) {
            OptionalDouble floorFt2 = unit.opening().place().floorAreaFt2();
            if (floorFt2.isPresent()) {
                return floorFt2;
            }
        }
        return OptionalDouble.empty();
    }
}
