package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Equal cells side by side with posts between them: n cells of (W − (n − 1)p)/n.
 *
 * @param cells left to right
 * @param posts between them
 */
record Mulled(List<Rect> cells, List<Rect> posts) {
    static Mulled of(Rect whole, int units, double postIn) {
        double cellIn = cellWidthIn(whole.widthIn(), units, postIn);
        List<Rect> cells = new ArrayList<>();
        List<Rect> posts = new ArrayList<>();
        for (int unit = 0; unit < units; unit++) {
            double leftIn = whole.leftIn() + unit * (cellIn + postIn);
            cells.add(new Rect(leftIn, whole.bottomIn(), cellIn, whole.heightIn()));
            if (unit + 1 < units) {
                double postLeftIn = leftIn + cellIn;
                posts.add(Rect.between(
                        postLeftIn, whole.bottomIn(), Math.min(postLeftIn + postIn, whole.rightIn()), whole.topIn()));
            }
        }
        return new Mulled(cells, posts);
    }

    static double cellWidthIn(double wholeIn, int units, double postIn) {
        return Math.max(0, (wholeIn - (units - 1) * postIn) / units);
    }
}
