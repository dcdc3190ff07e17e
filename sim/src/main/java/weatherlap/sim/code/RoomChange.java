package weatherlap.sim.code;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A rule that is asked of a room, not of a window, before and after its windows are replaced by one method.
 *
 * @param id as the tables have it; empty: an opening of which nobody says with which others it shares a room
 * @param openings of the room, by place in the house
 * @param bearers those on which the rule hangs: the one way out of a bedroom; all windows for light and air
 */
public record RoomChange(Optional<String> id, List<Integer> openings, List<Integer> bearers, CodeChange change) {
    public RoomChange {
        openings = List.copyOf(openings);
        bearers = List.copyOf(bearers);
    }

    /** How many of these fall short today. */
    public static int shortBefore(List<RoomChange> rooms) {
        return count(rooms, CodeChange::before);
    }

    /** How many of these fall short after the work. */
    public static int shortAfter(List<RoomChange> rooms) {
        return count(rooms, CodeChange::after);
    }

    private static int count(List<RoomChange> rooms, Function<CodeChange, CodeCheck> side) {
        return (int) rooms.stream()
                .filter(room -> side.apply(room.change()).verdict() == CodeCheck.Verdict.FAILS)
                .count();
    }
}
