package weatherlap.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import weatherlap.charts.drawing.WallDrawing;
import weatherlap.charts.drawing.WallPiece;
import weatherlap.charts.drawing.WindowSketch;
import weatherlap.charts.kit.Picture;

/** Invented windows and a wall for each drawing to scale. */
public final class DrawingSamples {
    private DrawingSamples() {}

    public static List<Picture> all() {
        return List.of(sketch(), wall());
    }

    /** A double hung unit in from the edges: frame, sash and two lites. */
    private static WindowSketch.View view(
            double in, double width, double height, double frame, double sash, double glassFt2) {
        double lite = (height - 2 * frame - 3 * sash) / 2;
        double wide = width - 2 * (frame + sash);
        return new WindowSketch.View(
                List.of(
                        new WallPiece(WallPiece.Kind.FRAME, in, in, width, height),
                        new WallPiece(
                                WallPiece.Kind.SASH, in + frame, in + frame, width - 2 * frame, height - 2 * frame),
                        new WallPiece(WallPiece.Kind.GLASS, in + frame + sash, in + frame + sash, wide, lite),
                        new WallPiece(
                                WallPiece.Kind.GLASS, in + frame + sash, in + frame + 2 * sash + lite, wide, lite)),
                glassFt2);
    }

    public static WindowSketch sketch() {
        WindowSketch.View unit = view(1.25, 29.5, 51.5, 1.2, 2.3, 7.44);
        WallPiece oldFrame = new WallPiece(WallPiece.Kind.OLD_FRAME, 0, 0, 32, 54);
        WindowSketch.View insert = new WindowSketch.View(
                Stream.concat(Stream.of(oldFrame), unit.pieces().stream()).toList(), unit.glassFt2());
        return new WindowSketch("Window A, insert", insert, 2);
    }

    public static WallDrawing wall() {
        double wide = 32 * 12;
        double eave = 17.5 * 12;
        double[] cuts = {0, 72, 36, 108};
        List<WallDrawing.Opening> openings = List.of(
                new WallDrawing.Opening("1", 48, 36, 36, 54),
                new WallDrawing.Opening("2", 180, 36, 72, 54),
                new WallDrawing.Opening("3", 52, 140, 32, 46),
                new WallDrawing.Opening("4", 300, 150, 24, 36));
        List<WallDrawing.Panel> panels = new ArrayList<>();
        for (int course = 0; course * 5 < eave; course++) {
            int place = 1;
            for (double left = -cuts[course % 4]; left < wide; left += 143) {
                double from = Math.max(0, left);
                double to = Math.min(wide, left + 144);
                double bottom = course * 5;
                boolean down = openings.stream()
                        .anyMatch(o -> o.leftIn() < to
                                && o.leftIn() + o.widthIn() > from
                                && o.bottomIn() < bottom + 5
                                && o.bottomIn() + o.heightIn() > bottom - 5);
                String mark = (course < 26 ? "" : "A") + (char) ('A' + course % 26) + place++;
                panels.add(new WallDrawing.Panel(mark, from, bottom, to - from, Math.min(5, eave - bottom), down));
            }
        }
        return new WallDrawing("North wall", wide, eave, panels, openings);
    }
}
