package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
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
        String laps = laps(openings);
        String noted = InWords.list(noted(openings));
        if (laps.isEmpty()) {
            return "Nobody has looked inside the walls yet. "
                    + (noted.isEmpty() ? "No stains or bad frames were noted." : "Noted from outside: " + noted + ".");
        }
        return laps + (noted.isEmpty() ? "" : " Also seen: " + noted + ".");
    }

    /** A sentence on the laps that someone has looked at; empty where nobody has. */
    private static String laps(List<Opening> openings) {
        List<String> joints = new ArrayList<>();
        long bad = addJoint(joints, "top", openings, o -> o.laps().head())
                + addJoint(joints, "sides", openings, o -> o.laps().jamb())
                + addJoint(joints, "bottom", openings, o -> o.laps().sill());
        if (joints.isEmpty()) {
            return "";
        }
        return bad == 0
                ? "Where someone has looked, all laps are in order."
                : "Bad laps where someone has looked: at the " + InWords.list(joints) + ".";
    }

    /** The windows whose laps at a joint are bad, of those looked at; adds them in words where there are any of these. */
    private static long addJoint(
            List<String> joints, String joint, List<Opening> openings, Function<Opening, Lap> lap) {
        long looked = openings.stream().filter(o -> lap.apply(o) != Lap.UNKNOWN).count();
        long bad = openings.stream()
                .filter(o -> lap.apply(o) == Lap.REVERSED || lap.apply(o) == Lap.MISSING)
                .count();
        if (looked > 0) {
            joints.add(joint + " " + (bad == 0 ? "none" : bad) + " of " + looked);
        }
        return bad;
    }

    private static List<String> noted(List<Opening> openings) {
        List<String> noted = new ArrayList<>();
        add(noted, "water stains or soft wood at", openings, o -> o.laps().stain() == Sighting.YES);
        add(noted, "rotten frames at", openings, o -> o.frame().rotten());
        add(noted, "worn frames at", openings, o -> o.frame().condition() == FrameCondition.WORN);
        return noted;
    }

    private static void add(List<String> noted, String what, List<Opening> openings, Predicate<Opening> which) {
        long windows = openings.stream().filter(which).count();
        if (windows > 0) {
            noted.add(what + " " + Numbers.count(windows, "window", "windows"));
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
