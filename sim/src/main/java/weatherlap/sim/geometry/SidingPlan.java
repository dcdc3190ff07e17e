package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;

/**
 * Which siding panels of a wall are unlocked and taken down for a set of openings: those of
 *
 * <pre>  courses ⌊bottom/e⌋ … ⌈top/e⌉ − 1, and the one above</pre>
 *
 * that stand over, under or beside an opening in the width of it, each once however many openings it spans. The course above comes down
 * because its lock covers the nails of the highest course that meets the opening (common practice, no source); the course below stays:
 * its own nails are not touched. Under the eave there is no course above, and the top one comes out of its trim.
 *
 * @param layout of the wall; empty where it has no courses
 * @param panels the whole wall, course by course from grade, left to right
 * @param panelsDown taken down when all the openings are done at once
 * @param panelsOneAtATime taken down, added up, when the wall is closed after every opening
 */
public record SidingPlan(
        Optional<SidingLayout> layout, List<SidingPanel> panels, int panelsDown, int panelsOneAtATime) {
    private static final SidingPlan NONE = new SidingPlan(Optional.empty(), List.of(), 0, 0);

    public SidingPlan {
        panels = List.copyOf(panels);
    }

    /** The plan of a wall as its cladding has it: none of brick or stucco. */
    public static SidingPlan of(House house, Elevation wall, Collection<Opening> openings) {
        return house.cladding().inCourses() ? of(wall, openings) : NONE;
    }

    /** The plan of a wall for a set of its openings. */
    public static SidingPlan of(Elevation wall, Collection<Opening> openings) {
        return SidingLayout.of(wall).map(layout -> of(layout, openings)).orElse(NONE);
    }

    private static SidingPlan of(SidingLayout layout, Collection<Opening> openings) {
        boolean[][] down = down(layout, openings);
        List<SidingPanel> panels = new ArrayList<>();
        for (int course = 0; course < down.length; course++) {
            for (int place = 0; place < down[course].length; place++) {
                panels.add(new SidingPanel(course, place, layout.panel(course, place), down[course][place]));
            }
        }
        int apart =
                openings.stream().mapToInt(opening -> count(layout, opening)).sum();
        return new SidingPlan(Optional.of(layout), panels, count(down), apart);
    }

    /** Panels to take down for one opening, each a bit that stands for the same panel at every opening of the wall. */
    public static BitSet panels(House house, Elevation wall, Opening opening) {
        BitSet panels = new BitSet();
        if (house.cladding().inCourses()) {
            SidingLayout.of(wall).ifPresent(layout -> set(panels, layout, opening));
        }
        return panels;
    }

    private static void set(BitSet panels, SidingLayout layout, Opening opening) {
        int bit = 0;
        for (int course = 0; course <= layout.lastCourse(opening); course++) {
            if (course >= layout.firstCourse(opening)) {
                int last = layout.lastPanel(course, opening);
                for (int place = layout.firstPanel(course, opening); place <= last; place++) {
                    panels.set(bit + place);
                }
            }
            bit += layout.panels(course);
        }
    }

    /** Panels that come down, from the top course down, left to right: the order they are unlocked in. */
    public List<SidingPanel> takenDown() {
        List<SidingPanel> taken = new ArrayList<>();
        for (int i = panels.size() - 1; i >= 0; i--) {
            SidingPanel panel = panels.get(i);
            if (panel.down()) {
                int at = taken.size();
                while (at > 0 && taken.get(at - 1).course() == panel.course()) {
                    at--;
                }
                taken.add(at, panel);
            }
        }
        return List.copyOf(taken);
    }

    /** Whether the top course comes out of the under-sill trim at the eave. */
    public boolean opensTrimAtEave() {
        return layout.isPresent()
                && panels.stream()
                        .anyMatch(panel ->
                                panel.down() && panel.course() == layout.get().courses() - 1);
    }

    private static boolean[][] down(SidingLayout layout, Collection<Opening> openings) {
        boolean[][] down = new boolean[layout.courses()][];
        for (int course = 0; course < down.length; course++) {
            down[course] = new boolean[layout.panels(course)];
        }
        for (Opening opening : openings) {
            for (int course = layout.firstCourse(opening); course <= layout.lastCourse(opening); course++) {
                int last = layout.lastPanel(course, opening);
                for (int place = layout.firstPanel(course, opening); place <= last; place++) {
                    down[course][place] = true;
                }
            }
        }
        return down;
    }

    private static int count(SidingLayout layout, Opening opening) {
        int count = 0;
        for (int course = layout.firstCourse(opening); course <= layout.lastCourse(opening); course++) {
            count += layout.lastPanel(course, opening) - layout.firstPanel(course, opening) + 1;
        }
        return count;
    }

    private static int count(boolean[][] down) {
        int count = 0;
        for (boolean[] course : down) {
            for (boolean panel : course) {
                count += panel ? 1 : 0;
            }
        }
        return count;
    }
}
