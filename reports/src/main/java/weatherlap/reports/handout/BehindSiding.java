package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.laps.LeakPath;
import weatherlap.sim.run.HouseTakeoff;

/** What was seen, or is likely, around the old windows. */
final class BehindSiding {
    private static final int MOST = 3;
    private static final int LONGEST = 200;

    private BehindSiding() {}

    /** @param insert the house with inserts, under which every old fault stays */
    static List<String> lines(HouseTakeoff insert, Density density) {
        List<String> lines = new ArrayList<>();
        List<Opening> openings = insert.house().openings().toList();
        lines.add(seen(openings));
        likely(insert, openings.size()).forEach(line -> lines.add(density.cut(line, LONGEST)));
        return lines;
    }

    private static String seen(List<Opening> openings) {
        List<String> seen = new ArrayList<>();
        addLaps(seen, "top", openings, Opening::headLap);
        addLaps(seen, "sides", openings, Opening::jambLap);
        addLaps(seen, "bottom", openings, Opening::sillLap);
        add(
                seen,
                "water stains or soft wood at",
                openings.stream().filter(o -> o.stain() == Sighting.YES).count());
        add(
                seen,
                "rotten frames at",
                openings.stream()
                        .filter(o -> o.frameCondition() == FrameCondition.ROTTEN)
                        .count());
        add(
                seen,
                "worn frames at",
                openings.stream()
                        .filter(o -> o.frameCondition() == FrameCondition.WORN)
                        .count());
        boolean looked = openings.stream()
                .anyMatch(o -> o.headLap() != Lap.UNKNOWN || o.jambLap() != Lap.UNKNOWN || o.sillLap() != Lap.UNKNOWN);
        String head = looked ? "Seen: " : "Nobody has looked behind the siding yet. ";
        if (seen.isEmpty()) {
            return head + (looked ? "all laps in order where we looked." : "No stains or bad frames were noted.");
        }
        return head + (looked ? "" : "Noted from outside: ") + Phrases.list(seen) + ".";
    }

    private static void addLaps(List<String> seen, String joint, List<Opening> openings, Function<Opening, Lap> lap) {
        long looked = openings.stream().filter(o -> lap.apply(o) != Lap.UNKNOWN).count();
        long bad = openings.stream()
                .filter(o -> lap.apply(o) == Lap.REVERSED || lap.apply(o) == Lap.MISSING)
                .count();
        if (looked > 0) {
            seen.add("laps at the " + joint + " bad at " + bad + " of " + looked + " looked at");
        }
    }

    private static void add(List<String> seen, String what, long windows) {
        if (windows > 0) {
            seen.add(what + " " + Phrases.count((int) windows, "window", "windows"));
        }
    }

    /** The old faults that most windows are likely to have, mean over the windows. */
    private static List<String> likely(HouseTakeoff insert, int openings) {
        Map<LapFault, Double> chances = new LinkedHashMap<>();
        insert.openings().stream()
                .flatMap(opening -> opening.leaks().paths().stream())
                .filter(path -> path.fault().kind() == FaultKind.EXISTING)
                .forEach((LeakPath path) -> chances.merge(path.fault(), path.probability() / openings, Double::sum));
        return chances.entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<LapFault, Double> chance) -> -chance.getValue()))
                .limit(MOST)
                .map(chance -> "Likely at " + Phrases.tenths(chance.getValue()) + ": "
                        + lower(chance.getKey().tradeName()) + ". "
                        + chance.getKey().whatHappens() + ".")
                .toList();
    }

    private static String lower(String name) {
        return name.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + name.substring(1);
    }
}
