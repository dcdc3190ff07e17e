package weatherlap.sim.geometry;

import java.util.Optional;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Opening;

/**
 * Courses and panels of a wall. Courses of exposure e are counted from grade; the top one is cut under the eave, where under-sill trim
 * holds it. In a course the panels, of length L, run from the left corner with end laps of 1 in. (makers' installation manuals), so that
 * joints stand a pitch p = L − 1 in. apart; each of four successive courses begins with another cut, of 0, p/2, p/4 and 3p/4, and no
 * joints stand in line within three courses (a wall no wider than a panel takes whole ones). Panel k of course c with cut o covers
 *
 * <pre>
 *   x from max(0, kp − o) to min(W, kp − o + L),   k = 0 … ⌈(W + o − L)/p⌉
 *   y from ce to min((c + 1)e, eave)
 * </pre>
 *
 * The layout takes no note of openings: a panel that one interrupts is one panel, in two pieces.
 *
 * @param widthIn of the wall
 * @param eaveIn height of the eave
 * @param exposureIn height of a course
 * @param lengthIn of a panel
 */
public record SidingLayout(double widthIn, double eaveIn, double exposureIn, double lengthIn) {
    /** End lap, in.: 1 in. in makers' manuals. */
    public static final double END_LAP_IN = 1;

    /** A joint or an edge this near to another coincides with it, in. */
    private static final double NOISE_IN = 1e-6;

    private static final double[] CUTS = {0, 0.5, 0.25, 0.75};

    /** As many courses from one that begins with a cut to the next one that does. */
    static final int CUT_COUNT = CUTS.length;

    /** Empty where the wall has no courses or panels. */
    static Optional<SidingLayout> of(Elevation wall) {
        if (wall.courseExposureIn().isEmpty() || wall.panelLengthIn().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SidingLayout(
                wall.widthIn(),
                wall.eaveHeightIn(),
                wall.courseExposureIn().getAsDouble(),
                wall.panelLengthIn().getAsDouble()));
    }

    int courses() {
        return up((eaveIn - NOISE_IN) / exposureIn);
    }

    /** Panels in a course, from 0. */
    int panels(int course) {
        double overIn = widthIn + cutIn(course) - lengthIn - NOISE_IN;
        return overIn <= 0 ? 1 : up(overIn / pitchIn()) + 1;
    }

    /** A panel as seen, with both its end laps. */
    Rect panel(int course, int panel) {
        double startIn = panel * pitchIn() - cutIn(course);
        return Rect.between(
                Math.max(0, startIn),
                course * exposureIn,
                Math.min(widthIn, startIn + lengthIn),
                Math.min(eaveIn, (course + 1) * exposureIn));
    }

    /** Lowest course that an opening meets; an opening that begins where a course ends does not meet it. */
    int firstCourse(Opening opening) {
        return Math.min(courses() - 1, down((opening.place().sillHeightIn() + NOISE_IN) / exposureIn));
    }

    /** The course above the highest that an opening meets, or the top course. */
    int lastCourse(Opening opening) {
        return Math.min(courses() - 1, up((opening.headHeightIn() - NOISE_IN) / exposureIn));
    }

    /** Leftmost panel of a course that an opening meets. */
    int firstPanel(int course, Opening opening) {
        double panels = (opening.place().leftIn() + NOISE_IN + cutIn(course) - lengthIn) / pitchIn();
        return Math.min(panels(course) - 1, Math.max(0, down(panels) + 1));
    }

    /** Rightmost panel of a course that an opening meets. */
    int lastPanel(int course, Opening opening) {
        double panels = (opening.rightIn() - NOISE_IN + cutIn(course)) / pitchIn();
        return Math.min(panels(course) - 1, up(panels) - 1);
    }

    /** As the floor of the number, in a few instructions. */
    private static int down(double number) {
        int whole = (int) number;
        return number < whole ? whole - 1 : whole;
    }

    private static int up(double number) {
        return -down(-number);
    }

    private double pitchIn() {
        return lengthIn - END_LAP_IN;
    }

    private double cutIn(int course) {
        return widthIn <= lengthIn ? 0 : CUTS[course % CUTS.length] * pitchIn();
    }
}
