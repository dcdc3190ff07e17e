package weatherlap.charts.drawing;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Comparator;
import java.util.List;
import weatherlap.analysis.words.Compass;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * A small rose for a sheet that is held in the hand: wind-driven rain by the way a wall faces, and the walls of one house on it.
 *
 * @param rays driving rain by bearing, in the order of the bearings
 * @param walls bearings of the walls, degrees clockwise from north
 * @param letters of north, east, south and west
 */
public record WallRose(List<Ray> rays, List<Double> walls, List<String> letters) implements Picture {
    /**
     * Driving rain towards a bearing.
     *
     * @param bearingDeg degrees clockwise from north, 0 to below 360
     * @param litresPerM2Year L/m² a year
     */
    public record Ray(double bearingDeg, double litresPerM2Year) {
        public Ray {
            Check.within("bearing", bearingDeg, 0, Math.nextDown(360.0));
            Check.notNegative("driving rain", litresPerM2Year);
        }
    }

    private static final int SIDE_PX = 156;
    private static final double RADIUS_PX = 52;
    private static final double LETTER_PX = 68;
    private static final float TYPE_PX = 13.5f;

    public WallRose {
        rays = List.copyOf(rays);
        walls = List.copyOf(walls);
        letters = List.copyOf(letters);
        Check.within("letters", letters.size(), 4, 4);
    }

    public WallRose(List<Ray> rays, List<Double> walls) {
        this(rays, walls, List.of("N", "E", "S", "W"));
    }

    @Override
    public String name() {
        return "wall-rose";
    }

    @Override
    public String title() {
        return "Wind-driven rain by the way a wall faces";
    }

    @Override
    public int widthPx() {
        return SIDE_PX;
    }

    @Override
    public int heightPx() {
        return SIDE_PX;
    }

    @Override
    public String message() {
        if (highest() <= 0) {
            return "There is no wind-driven rain to show.";
        }
        Ray most = rays.stream()
                .max(Comparator.comparingDouble(Ray::litresPerM2Year))
                .orElseThrow();
        Ray least = rays.stream()
                .min(Comparator.comparingDouble(Ray::litresPerM2Year))
                .orElseThrow();
        return "Here the wind drives most rain at walls that face " + Compass.word(most.bearingDeg())
                + ", and least at walls that face " + Compass.word(least.bearingDeg()) + " ("
                + Numbers.percent(least.litresPerM2Year() / most.litresPerM2Year(), 0) + " of the most).";
    }

    private double highest() {
        return rays.stream().mapToDouble(Ray::litresPerM2Year).max().orElse(0);
    }

    @Override
    public void draw(Graphics2D g) {
        double middle = SIDE_PX / 2.0;
        g.setStroke(Theme.HAIRLINE);
        g.setPaint(Tone.RULE.color());
        for (double share : new double[] {0.5, 1}) {
            double r = share * RADIUS_PX;
            g.draw(new Ellipse2D.Double(middle - r, middle - r, 2 * r, 2 * r));
        }
        if (highest() > 0) {
            Path2D outline = outline(middle);
            g.setPaint(Tone.FULL_FLANGE_TINT.color());
            g.fill(outline);
            g.setPaint(Tone.FULL_FLANGE.color());
            g.setStroke(Theme.stroke(1.5f));
            g.draw(outline);
        }
        g.setPaint(Tone.INK.color());
        g.setStroke(new BasicStroke(5, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        walls.forEach(bearing -> g.draw(wall(middle, Math.toRadians(bearing))));
        Font font = Theme.TEXT.deriveFont(TYPE_PX);
        for (int i = 0; i < 4; i++) {
            double bearing = Math.toRadians(90.0 * i);
            Lettering.draw(
                    g,
                    letters.get(i),
                    font,
                    Tone.INK,
                    middle + LETTER_PX * Math.sin(bearing),
                    middle - LETTER_PX * Math.cos(bearing) + TYPE_PX * 0.36,
                    0.5);
        }
    }

    private Path2D outline(double middle) {
        Path2D path = new Path2D.Double();
        for (Ray ray : rays) {
            double r = RADIUS_PX * ray.litresPerM2Year() / highest();
            double bearing = Math.toRadians(ray.bearingDeg());
            double x = middle + r * Math.sin(bearing);
            double y = middle - r * Math.cos(bearing);
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        path.closePath();
        return path;
    }

    /** A short bar square to the bearing, at the rim. */
    private static Line2D wall(double middle, double bearing) {
        double x = middle + RADIUS_PX * Math.sin(bearing);
        double y = middle - RADIUS_PX * Math.cos(bearing);
        double along = 11;
        return new Line2D.Double(
                x - along * Math.cos(bearing),
                y - along * Math.sin(bearing),
                x + along * Math.cos(bearing),
                y + along * Math.sin(bearing));
    }
}
