package weatherlap.analysis.tables;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.run.ElevationResult;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.OpeningResult;

/**
 * The comparison for the whole portfolio and for each segment of it.
 *
 * @param bySegment in the order in which segments are named
 */
public record Segments(Share whole, Map<Segmentation, List<Share>> bySegment) {
    public Segments {
        bySegment = java.util.Collections.unmodifiableMap(new EnumMap<>(bySegment));
    }

    /** Adds up while a portfolio is walked through. */
    static final class Sum implements Serializable {
        private final Share.Sum whole = new Share.Sum();
        private final EnumMap<Segmentation, TreeMap<Segmentation.Segment, Share.Sum>> sums =
                new EnumMap<>(Segmentation.class);

        Sum() {
            for (Segmentation segmentation : Segmentation.values()) {
                sums.put(segmentation, new TreeMap<>());
            }
        }

        /** Takes a house in. */
        void add(HouseResult house) {
            Contrast contrast = house.contrast();
            String last = "";
            List<Share.Sum> takers = List.of();
            for (ElevationResult wall : house.elevations()) {
                if (!contrast.holds(wall.method())) {
                    continue;
                }
                String id = wall.elevation().id();
                if (!id.equals(last)) { // its methods come one after another
                    takers = takers(house.house(), wall.elevation());
                    last = id;
                }
                List<OpeningResult> openings = openings(house, wall);
                for (Share.Sum taker : takers) {
                    taker.add(house, contrast, wall, openings);
                }
            }
        }

        /** The sums that a wall counts in. */
        private List<Share.Sum> takers(House house, Elevation wall) {
            List<Share.Sum> takers = new ArrayList<>();
            takers.add(whole);
            for (Map.Entry<Segmentation, TreeMap<Segmentation.Segment, Share.Sum>> bySegment : sums.entrySet()) {
                Segmentation.Segment segment = bySegment.getKey().of(house, wall);
                takers.add(bySegment.getValue().computeIfAbsent(segment, key -> new Share.Sum()));
            }
            return takers;
        }

        private static List<OpeningResult> openings(HouseResult house, ElevationResult wall) {
            List<OpeningResult> openings = new ArrayList<>();
            for (OpeningResult opening : house.openings()) {
                if (opening.method() == wall.method()
                        && opening.elevation().id().equals(wall.elevation().id())) {
                    openings.add(opening);
                }
            }
            return openings;
        }

        /** Takes in other houses, which come after these. */
        void add(Sum other) {
            whole.add(other.whole);
            other.sums.forEach((segmentation, byLabel) -> byLabel.forEach((segment, sum) -> sums.get(segmentation)
                    .computeIfAbsent(segment, key -> new Share.Sum())
                    .add(sum)));
        }

        Segments segments() {
            Map<Segmentation, List<Share>> shares = new EnumMap<>(Segmentation.class);
            sums.forEach((segmentation, byLabel) -> {
                List<Share> list = new ArrayList<>();
                byLabel.forEach((segment, sum) -> list.add(sum.share(segment.label())));
                shares.put(segmentation, List.copyOf(list));
            });
            return new Segments(whole.share("all openings"), shares);
        }
    }

    /** One row a segment and method, the whole portfolio first. */
    public ResultTable table() {
        return SegmentTable.of(this);
    }
}
