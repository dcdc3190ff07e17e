package weatherlap.analysis.tables;

import java.io.Serializable;
import java.util.List;
import weatherlap.analysis.words.Compass;
import weatherlap.analysis.words.InWords;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;

/** What the openings of a portfolio are told apart by. */
public enum Segmentation {
    CLADDING("cladding"),
    STOREYS("stories"),
    DECADE("decade built"),
    BEARING("bearing of the wall"),
    OVERHANG("overhang of the eave");

    private final String title;

    Segmentation(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }

    /** By what whole houses are told apart. */
    public static final List<Segmentation> OF_HOUSES = List.of(CLADDING, STOREYS, DECADE);

    /**
     * The kind of house that one is.
     *
     * @param house with a wall
     * @throws IllegalArgumentException where walls of a house differ in it
     */
    public Segment of(House house) {
        if (!OF_HOUSES.contains(this)) {
            throw new IllegalArgumentException(this + " tells walls apart, not houses.");
        }
        return of(house, house.elevations().get(0));
    }

    /** The segment that the openings of a wall belong to, with what its label sorts by. */
    Segment of(House house, Elevation wall) {
        return switch (this) {
            case CLADDING -> new Segment(house.cladding().ordinal(), InWords.of(house.cladding()));
            case STOREYS ->
                new Segment(house.storeys(), house.storeys() + (house.storeys() == 1 ? " story" : " stories"));
            case DECADE -> decade(house.yearBuilt() / 10 * 10);
            case BEARING -> new Segment(Compass.octant(wall.bearingDeg()), Compass.word(wall.bearingDeg()));
            case OVERHANG -> overhang(wall.overhangIn());
        };
    }

    private static Segment decade(int decade) {
        return decade < 1920 ? new Segment(0, "before 1920") : new Segment(decade, decade + "s");
    }

    private static Segment overhang(double overhangIn) {
        if (overhangIn == 0) {
            return new Segment(0, "none");
        }
        int upper = overhangIn <= 6 ? 6 : overhangIn <= 12 ? 12 : overhangIn <= 24 ? 24 : Integer.MAX_VALUE;
        return new Segment(
                upper,
                switch (upper) {
                    case 6 -> "up to 6 in.";
                    case 12 -> "over 6 to 12 in.";
                    case 24 -> "over 12 to 24 in.";
                    default -> "over 24 in.";
                });
    }

    /** A segment: its place among the others, and its name. */
    public record Segment(int order, String label) implements Comparable<Segment>, Serializable {
        @Override
        public int compareTo(Segment other) {
            return Integer.compare(order, other.order);
        }
    }
}
