package weatherlap.datasets.site;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import weatherlap.datasets.climate.Location;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;

/**
 * A place that a user names: latitude and longitude, or words that are looked up in the names and states of weather stations, for want of
 * a list of towns. "Newark NJ" is found since the station of its airport is called so; a town without a station is not.
 *
 * @param location of the place, or of the station that stands for it
 * @param standIn the station by whose name it was found; empty: the user gave numbers
 */
public record PlaceSearch(String asked, Location location, Optional<Station> standIn) {
    private static final Pattern NUMBERS =
            Pattern.compile("\\s*(-?\\d+(?:\\.\\d+)?)\\s*[,;]\\s*(-?\\d+(?:\\.\\d+)?)\\s*");
    /** Stations of one name that lie no further apart stand for one place; judgement. */
    private static final double ONE_PLACE_MILES = 30;

    private static final int CANDIDATES = 8;
    private static final String OPTION = "--near";
    private static final String NUMBERS_INSTEAD = "; give latitude and longitude, as in 40.7,-74.2";

    /** The place, or why there is none or more than one. */
    public static Loaded<PlaceSearch> of(String asked, Stations stations) {
        Problems problems = new Problems();
        Matcher numbers = NUMBERS.matcher(asked);
        Optional<PlaceSearch> found = numbers.matches()
                ? byNumbers(asked, Double.parseDouble(numbers.group(1)), Double.parseDouble(numbers.group(2)), problems)
                : byName(asked, stations, problems);
        return Loaded.of(found, problems);
    }

    private static Optional<PlaceSearch> byNumbers(String asked, double latitude, double longitude, Problems problems) {
        if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) {
            problems.error(OPTION, Quoted.of(asked) + " is not a latitude (-90 to 90) and longitude (-180 to 180)");
            return Optional.empty();
        }
        return Optional.of(new PlaceSearch(asked, new Location(latitude, longitude), Optional.empty()));
    }

    private static Optional<PlaceSearch> byName(String asked, Stations stations, Problems problems) {
        List<String> words = Arrays.stream(asked.toLowerCase(Locale.ROOT).split("[^a-z0-9]+"))
                .filter(word -> !word.isEmpty())
                .toList();
        Optional<String> state = words.size() < 2
                ? Optional.empty()
                : Optional.of(words.get(words.size() - 1).toUpperCase(Locale.ROOT))
                        .filter(stations::hasState);
        List<String> name = state.isPresent() ? words.subList(0, words.size() - 1) : words;
        List<Station> found = name.isEmpty() ? List.of() : stations.named(name, state);
        if (found.isEmpty()) {
            problems.error(OPTION, Quoted.of(asked) + " is not in the name of any weather station" + NUMBERS_INSTEAD);
            return Optional.empty();
        }
        Station first = found.get(0);
        if (found.stream().anyMatch(other -> other.location().milesTo(first.location()) > ONE_PLACE_MILES)) {
            problems.error(
                    OPTION,
                    Quoted.of(asked) + " could be any of "
                            + found.stream()
                                    .limit(CANDIDATES)
                                    .map(Station::title)
                                    .collect(Collectors.joining("; "))
                            + (found.size() > CANDIDATES ? " and " + (found.size() - CANDIDATES) + " more" : "")
                            + ": name the state too" + NUMBERS_INSTEAD);
            return Optional.empty();
        }
        return Optional.of(new PlaceSearch(asked, first.location(), Optional.of(first)));
    }
}
