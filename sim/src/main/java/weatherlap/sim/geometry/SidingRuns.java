package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.quantity.SidingRun;

/** Into which runs the openings of a wall fall: two are in one run where a panel that comes down spans both, or a chain of such. */
public final class SidingRuns {
    private final List<Opening> openings;
    private final List<Boolean> down;
    /** The opening that each is joined to; itself where it stands for its run. */
    private final int[] joined;

    private final int[] panels;

    private SidingRuns(List<Opening> openings, List<Boolean> down) {
        this.openings = openings;
        this.down = down;
        joined = new int[openings.size()];
        Arrays.setAll(joined, opening -> opening);
        panels = new int[openings.size()];
    }

    /**
     * Runs of a wall from the leftmost on. An opening whose siding stays is a run without a panel; where none comes down, as on brick, on
     * stucco and where there are no courses, all are so, in the wall's order.
     *
     * @param down by opening of the wall, whether siding comes down for it
     */
    public static List<SidingRun> of(House house, Elevation wall, List<Boolean> down) {
        List<Opening> openings = wall.openings();
        if (house.cladding().inCourses() && down.contains(true)) {
            Optional<SidingLayout> layout = SidingLayout.of(wall);
            if (layout.isPresent()) {
                return new SidingRuns(openings, down).of(layout.get());
            }
        }
        return SidingRun.apart(openings.size());
    }

    private List<SidingRun> of(SidingLayout layout) {
        int[][] owners = new int[layout.courses()][];
        for (int course = 0; course < owners.length; course++) {
            owners[course] = new int[layout.panels(course)];
            Arrays.fill(owners[course], -1);
        }
        for (int opening = 0; opening < joined.length; opening++) {
            if (down.get(opening)) {
                take(layout, opening, owners);
            }
        }
        List<SidingRun> runs = new ArrayList<>();
        for (int opening = 0; opening < joined.length; opening++) {
            if (head(opening) == opening) {
                runs.add(run(opening));
            }
        }
        runs.sort(Comparator.comparingDouble(
                run -> openings.get(run.openings().get(0)).place().leftIn()));
        return runs;
    }

    private void take(SidingLayout layout, int opening, int[][] owners) {
        Opening window = openings.get(opening);
        int[] first = new int[SidingLayout.CUT_COUNT];
        int[] last = new int[SidingLayout.CUT_COUNT];
        for (int course = 0; course < SidingLayout.CUT_COUNT; course++) {
            first[course] = layout.firstPanel(course, window);
            last[course] = layout.lastPanel(course, window);
        }
        int top = layout.lastCourse(window);
        for (int course = layout.firstCourse(window); course <= top; course++) {
            int cut = course % SidingLayout.CUT_COUNT;
            for (int place = first[cut]; place <= last[cut]; place++) {
                int owner = owners[course][place];
                if (owner < 0) {
                    owners[course][place] = opening;
                    panels[opening]++;
                } else {
                    joined[head(opening)] = head(owner);
                }
            }
        }
    }

    private int head(int opening) {
        int head = opening;
        while (joined[head] != head) {
            head = joined[head];
        }
        return head;
    }

    private SidingRun run(int head) {
        List<Integer> members = new ArrayList<>();
        int count = 0;
        for (int opening = 0; opening < joined.length; opening++) {
            if (head(opening) == head) {
                members.add(opening);
                count += panels[opening];
            }
        }
        members.sort(Comparator.comparingDouble(
                opening -> openings.get(opening).place().leftIn()));
        return new SidingRun(members, count);
    }
}
