package weatherlap.analysis.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import weatherlap.analysis.rule.AskedFact;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.House;

/** What a measurer sees of a house from the street and at its windows, as facts to ask about. */
final class HouseFacts {
    private static final double OVERHANG_STEP_IN = 6;
    private static final double DECADE_YEARS = 10;

    private HouseFacts() {}

    /**
     * One column a fact, one row a house.
     *
     * @param bearings whether the way windows face is a fact: not where rain is the same on every side
     */
    static List<AskedFact> of(List<House> houses, boolean bearings) {
        List<AskedFact> facts = new ArrayList<>(wherever(houses));
        if (bearings) {
            facts.add(new AskedFact.Word(
                    "window_side",
                    "Do most windows face %s?"::formatted,
                    words(
                            houses,
                            h -> most(
                                    walls(h).flatMap(e -> e.openings().stream().map(o -> side(e.bearingDeg())))))));
        }
        return facts;
    }

    private static List<AskedFact> wherever(List<House> houses) {
        return List.of(
                AskedFact.Number.byStep(
                        "storeys", HouseFacts::fewerStories, numbers(houses, h -> (double) h.storeys()), 1),
                AskedFact.Number.byStep(
                        "overhang_in",
                        "Is any eave over a window shorter than %s in.?"::formatted,
                        numbers(houses, HouseFacts::shortestOverhangIn),
                        OVERHANG_STEP_IN),
                AskedFact.Number.byStep(
                        "year_built",
                        "Was the house built before %s?"::formatted,
                        numbers(houses, h -> (double) h.yearBuilt()),
                        DECADE_YEARS),
                new AskedFact.Word("barrier", HouseFacts::barrier, words(houses, h -> word(h.barrier()))),
                new AskedFact.Word(
                        "cladding", "Is the cladding %s?"::formatted, words(houses, h -> word(h.cladding()))),
                new AskedFact.Word(
                        "frame_condition", HouseFacts::worstFrameIs, words(houses, h -> word(worstFrame(h)))),
                new AskedFact.Word(
                        "frame_material",
                        "Are most frames %s?"::formatted,
                        words(
                                houses,
                                h -> most(h.openings().map(o -> word(o.frame().material()))))));
    }

    private static String fewerStories(String than) {
        return switch (than) {
            case "2" -> "Is it a one-story house?";
            case "3" -> "Does the house have one or two stories?";
            default -> "Does the house have fewer than " + than + " stories?";
        };
    }

    private static String barrier(String word) {
        return word.equals("none") ? "Is there no weather barrier?" : "Is the weather barrier " + word + "?";
    }

    private static String worstFrameIs(String word) {
        return switch (word) {
            case "rotten" -> "Is any frame rotten?";
            case "worn" -> "Is any frame worn, and none rotten?";
            case "sound" -> "Are all frames sound?";
            default -> "Has nobody looked at some frame, and is none worn or rotten?";
        };
    }

    /** Over the walls with openings, in.; 0 where there are none. */
    static double shortestOverhangIn(House house) {
        return walls(house).mapToDouble(Elevation::overhangIn).min().orElse(0);
    }

    /** The worst there is; what is not known is worse than sound and better than worn. */
    static FrameCondition worstFrame(House house) {
        List<FrameCondition> order =
                List.of(FrameCondition.SOUND, FrameCondition.UNKNOWN, FrameCondition.WORN, FrameCondition.ROTTEN);
        return house.openings()
                .map(o -> o.frame().condition())
                .max(Comparator.comparingInt(order::indexOf))
                .orElse(FrameCondition.UNKNOWN);
    }

    /** Quarter of the compass about north, east, south, west. */
    static String side(double bearingDeg) {
        return List.of("north", "east", "south", "west").get((int) Math.floor((bearingDeg + 45) % 360 / 90));
    }

    private static Stream<Elevation> walls(House house) {
        return house.elevations().stream().filter(e -> !e.openings().isEmpty());
    }

    /** The word seen most, the first of equals in the alphabet. */
    private static String most(Stream<String> words) {
        List<String> all = words.sorted().toList();
        return all.stream()
                .max(Comparator.comparingLong(
                                (String w) -> all.stream().filter(w::equals).count())
                        .thenComparing(Comparator.reverseOrder()))
                .orElse("unknown");
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static List<Double> numbers(List<House> houses, Function<House, Double> value) {
        return houses.stream().map(value).toList();
    }

    private static List<String> words(List<House> houses, Function<House, String> value) {
        return houses.stream().map(value).toList();
    }
}
