package weatherlap.charts;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import weatherlap.charts.drawing.GlassSquares;
import weatherlap.charts.drawing.RoomView;
import weatherlap.charts.drawing.WallDrawing;
import weatherlap.charts.drawing.WallPiece;
import weatherlap.charts.drawing.WindowSketch;
import weatherlap.charts.kit.Captioned;
import weatherlap.charts.kit.Picture;

/** Invented windows and a wall for each drawing to scale. */
public final class DrawingSamples {
    private DrawingSamples() {}

    public static List<Picture> all() {
        return List.of(
                sketch(),
                wall(),
                room(),
                squares(),
                new Captioned(sketch(), "Ventana A, inserto", "Se pierde un poco de vidrio en cada orilla."));
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

    /** The insert of the sketch from the room: glass of 27 by 49 in. stood there before. */
    private static RoomView room() {
        return new RoomView(
                "Insert",
                "The insert loses glass at every edge.",
                sketch().view(),
                32,
                54,
                new Rectangle2D.Double(2.5, 2.5, 27, 49),
                List.of(
                        new RoomView.Edge(RoomView.Side.LEFT, "1\u00be\u2033"),
                        new RoomView.Edge(RoomView.Side.RIGHT, "1\u00be\u2033"),
                        new RoomView.Edge(RoomView.Side.TOP, "1\u215c\u2033"),
                        new RoomView.Edge(RoomView.Side.BOTTOM, "+\u00bd\u2033")),
                RoomView.scale(32, 54, 160, 230));
    }

    private static GlassSquares squares() {
        return new GlassSquares(
                "Daylight",
                "All inserts keep 84 of 101 square feet.",
                List.of(
                        new GlassSquares.Row("today", 101.3),
                        new GlassSquares.Row("Marco completo donde se puede", 98.7),
                        new GlassSquares.Row("All inserts", 83.9)),
                GlassSquares.squareFt2(101.3));
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
