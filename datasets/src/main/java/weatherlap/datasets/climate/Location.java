package weatherlap.datasets.climate;

import java.util.List;
import java.util.Optional;
import weatherlap.sim.Check;

/**
 * A place on the earth.
 *
 * @param latitudeDeg north of the equator, −90 to 90
 * @param longitudeDeg east of Greenwich, −180 to 180
 */
public record Location(double latitudeDeg, double longitudeDeg) {
    /** Mean radius of the earth in miles (6371.0 km). */
    private static final double EARTH_RADIUS_MILES = 3958.76;

    private static final double DEGREES_PER_HOUR = 15;

    public Location {
        Check.within("latitude", latitudeDeg, -90, 90);
        Check.within("longitude", longitudeDeg, -180, 180);
    }

    /** That of two cells of a row; empty where they are not there or no place on the earth. */
    static Optional<Location> of(List<String> cells, int latitude, int longitude) {
        if (Math.min(latitude, longitude) < 0 || Math.max(latitude, longitude) >= cells.size()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new Location(Double.parseDouble(cells.get(latitude)), Double.parseDouble(cells.get(longitude))));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Great-circle distance in miles, by the haversine formula on a sphere: within 0.5 % of that on the ellipsoid. */
    public double milesTo(Location other) {
        double north = Math.toRadians(other.latitudeDeg - latitudeDeg);
        double east = Math.toRadians(other.longitudeDeg - longitudeDeg);
        double haversine = square(Math.sin(north / 2))
                + Math.cos(Math.toRadians(latitudeDeg))
                        * Math.cos(Math.toRadians(other.latitudeDeg))
                        * square(Math.sin(east / 2));
        return 2 * EARTH_RADIUS_MILES * Math.asin(Math.min(1, Math.sqrt(haversine)));
    }

    /** Hours by which local standard time is ahead of UTC, taken from the longitude alone: zones that people keep differ by an hour at most. */
    public int hoursAheadOfUtc() {
        return (int) Math.round(longitudeDeg / DEGREES_PER_HOUR);
    }

    private static double square(double x) {
        return x * x;
    }
}
