package weatherlap.datasets.portfolio;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;

/** Portfolios whose rows are mixed, those of one house staying in their order. */
public final class Shuffled {
    private Shuffled() {}

    /** Writes the tables of a folder, which have no line breaks within cells, into another one. */
    public static Path write(Path sorted, Path folder, long seed) throws IOException {
        Files.createDirectories(folder);
        Random random = new Random(seed);
        for (String file : List.of("houses.csv", "elevations.csv", "openings.csv")) {
            List<String> lines = Files.readAllLines(sorted.resolve(file));
            List<String> mixed = new ArrayList<>(lines.subList(0, 1));
            mixed.addAll(mixed(lines.subList(1, lines.size()), random));
            Files.write(folder.resolve(file), mixed);
        }
        return folder;
    }

    private static List<String> mixed(List<String> rows, Random random) {
        Map<String, Queue<String>> byHouse = new HashMap<>();
        List<String> turns = new ArrayList<>();
        for (String row : rows) {
            String house = row.substring(0, row.indexOf(','));
            turns.add(house);
            byHouse.computeIfAbsent(house, key -> new ArrayDeque<>()).add(row);
        }
        Collections.shuffle(turns, random);
        return turns.stream().map(house -> byHouse.get(house).remove()).toList();
    }
}
