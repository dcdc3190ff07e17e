package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import weatherlap.analysis.words.InWords;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.laps.LeakPath;
import weatherlap.sim.run.HouseTakeoff;

/** What was seen, or is likely, around the old windows. */
record BehindSiding(FamilyWords words, Density density) {
    private static final int MOST = 3;
    private static final int LONGEST = 200;

    /** @param insert the house with inserts, under which every old fault stays */
    List<String> lines(HouseTakeoff insert) {
        List<String> lines = new ArrayList<>();
        List<Opening> openings = insert.house().openings().toList();
        lines.add(seen(openings));
        likely(insert, openings.size()).forEach(line -> lines.add(density.cut(line, LONGEST)));
        return lines;
    }

    private String seen(List<Opening> openings) {
        String laps = laps(openings);
        String noted = words.list(noted(openings));
        if (laps.isEmpty()) {
            return words.of("behind.unseen")
                    + ' '
                    + (noted.isEmpty() ? words.of("behind.nothing") : words.of("behind.noted", noted));
        }
        return laps + (noted.isEmpty() ? "" : ' ' + words.of("behind.also", noted));
    }

    /** A sentence on the laps that someone has looked at; empty where nobody has. */
    private String laps(List<Opening> openings) {
        List<String> joints = new ArrayList<>();
        long bad = addJoint(joints, "top", openings, o -> o.laps().head())
                + addJoint(joints, "sides", openings, o -> o.laps().jamb())
                + addJoint(joints, "bottom", openings, o -> o.laps().sill());
        if (joints.isEmpty()) {
            return "";
        }
        return bad == 0 ? words.of("behind.laps.good") : words.of("behind.laps.bad", words.list(joints));
    }

    /** The windows whose laps at a joint are bad, of those looked at; adds them in words where there are any of these. */
    private long addJoint(List<String> joints, String joint, List<Opening> openings, Function<Opening, Lap> lap) {
        long looked = openings.stream().filter(o -> lap.apply(o) != Lap.UNKNOWN).count();
        long bad = openings.stream()
                .filter(o -> lap.apply(o) == Lap.REVERSED || lap.apply(o) == Lap.MISSING)
                .count();
        if (looked > 0) {
            joints.add(words.of(
                    "behind.joint." + joint, bad == 0 ? words.of("none") : Long.toString(bad), Long.toString(looked)));
        }
        return bad;
    }

    private List<String> noted(List<Opening> openings) {
        List<String> noted = new ArrayList<>();
        add(noted, "behind.stains", openings, o -> o.laps().stain() == Sighting.YES);
        add(noted, "behind.rotten", openings, o -> o.frame().rotten());
        add(noted, "behind.worn", openings, o -> o.frame().condition() == FrameCondition.WORN);
        return noted;
    }

    private void add(List<String> noted, String what, List<Opening> openings, Predicate<Opening> which) {
        long windows = openings.stream().filter(which).count();
        if (windows > 0) {
            noted.add(words.of(what, words.count(windows, "windows")));
        }
    }

    /** The old faults that most windows are likely to have, mean over the windows. */
    private List<String> likely(HouseTakeoff insert, int openings) {
        Map<LapFault, Double> chances = new LinkedHashMap<>();
        insert.openings().stream()
                .flatMap(opening -> opening.leaks().paths().stream())
                .filter(path -> path.fault().kind() == FaultKind.EXISTING)
                .forEach((LeakPath path) -> chances.merge(path.fault(), path.probability() / openings, Double::sum));
        return chances.entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<LapFault, Double> chance) -> -chance.getValue()))
                .limit(MOST)
                .map(chance -> words.of(
                        "behind.likely",
                        new Phrases(words).tenths(chance.getValue()),
                        InWords.small(
                                told(chance.getKey(), "name", chance.getKey().tradeName())),
                        told(chance.getKey(), "happens", chance.getKey().whatHappens())))
                .toList();
    }

    /** A fault of the bundled table in the words of the sheet; one of the shop's own as its table has it. */
    private String told(LapFault fault, String what, String asTableHasIt) {
        String key = "fault." + fault.id() + '.' + what;
        return words.knows(key) ? words.of(key) : asTableHasIt;
    }
}
