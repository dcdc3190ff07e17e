package weatherlap.analysis.tables;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import weatherlap.sim.run.ElevationResult;
import weatherlap.sim.run.HouseResult;

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
            for (ElevationResult wall : house.elevations()) {
                whole.add(house, wall);
                sums.forEach((segmentation, byLabel) -> byLabel.computeIfAbsent(
                                segmentation.of(house.house(), wall.elevation()), key -> new Share.Sum())
                        .add(house, wall));
            }
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
