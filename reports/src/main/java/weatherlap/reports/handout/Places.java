package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;

/** Where windows are: rooms, then the keys wall by wall. */
record Places(House house, Density density, FamilyWords words) {
    private static final int ROOMS = 4;
    private static final int KEYS = 8;

    String of(List<OpeningTakeoff> windows) {
        Set<String> rooms = new LinkedHashSet<>();
        Map<String, List<String>> walls = new LinkedHashMap<>();
        int shown = density.bounded() ? Math.min(KEYS, windows.size()) : windows.size();
        windows.forEach(window -> rooms.add(words.name(window.opening().place().room())));
        windows.subList(0, shown).forEach(window -> walls.computeIfAbsent(
                        density.cut(wall(window.elevation()), 2 * density.longestKey()), wall -> new ArrayList<>())
                .add(density.cut(window.opening().id(), density.longestKey())));
        List<String> places = new ArrayList<>();
        walls.forEach((wall, keys) -> places.add(wall + " " + String.join(", ", keys)));
        return density.some(List.copyOf(rooms), ROOMS, words) + ": " + String.join("; ", places)
                + (shown < windows.size() ? " " + words.of("and.more", Integer.toString(windows.size() - shown)) : "");
    }

    private String wall(Elevation wall) {
        return density.shortWalls() ? new Phrases(words).shortWall(house, wall) : new Phrases(words).wall(house, wall);
    }
}
