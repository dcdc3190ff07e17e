package weatherlap.sim.geometry;

import weatherlap.sim.Check;

/**
 * One siding panel of a wall.
 *
 * @param course from 0 at grade
 * @param place from 0 at the left corner
 * @param rect on the wall
 * @param down whether it is taken down
 */
public record SidingPanel(int course, int place, Rect rect, boolean down) {
    private static final int LETTERS = 26;

    public SidingPanel {
        Check.within("course", course, 0, 10_000);
        Check.within("place", place, 0, 10_000);
    }

    /** The course by letter from grade up (A … Z, AA …) and the place by number from the left: C2. */
    public String mark() {
        StringBuilder letters = new StringBuilder();
        for (int rest = course + 1; rest > 0; rest = (rest - 1) / LETTERS) {
            letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
        }
        return letters.append(place + 1).toString();
    }
}
