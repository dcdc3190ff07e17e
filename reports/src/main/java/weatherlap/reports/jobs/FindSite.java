package weatherlap.reports.jobs;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import weatherlap.datasets.site.PlaceSearch;
import weatherlap.datasets.site.SiteText;
import weatherlap.datasets.site.Station;
import weatherlap.datasets.site.Stations;
import weatherlap.reports.format.Content;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;

/**
 * Lists the weather stations near a place and begins the site file of houses there. Fetches nothing.
 *
 * @param near latitude and longitude, or words of a station's name and its state
 * @param station whose weather is to be that of the houses; empty: the nearest
 * @param firstYear of the weather
 * @param lastYear of it
 * @param output where the site file goes; empty: nowhere
 */
public record FindSite(
        String near, Optional<String> station, int firstYear, int lastYear, Optional<OutputRequest> output) {
    private static final int SHOWN = 5;

    /** @throws BadInput for a place that is not found or not only one, and an unknown station */
    public void run(Messages messages) throws IOException {
        PlaceSearch place = BadInput.unlessSound(PlaceSearch.of(near, Stations.bundled()));
        List<Station> nearest = Stations.bundled().nearest(place.location(), SHOWN);
        Station chosen = station.map(FindSite::known).orElse(nearest.get(0));
        place.standIn()
                .ifPresent(found -> messages.note(String.format(
                        Locale.ROOT,
                        "places are looked up by the names of weather stations; the program took %s for %s, at"
                                + " %.3f,%.3f",
                        near,
                        found.title(),
                        found.location().latitudeDeg(),
                        found.location().longitudeDeg())));
        messages.result("miles  station      name");
        nearest.forEach(near -> messages.result(line(place, near)));
        if (!nearest.contains(chosen)) {
            messages.result(line(place, chosen));
        }
        messages.note("NOAA's hourly files of " + chosen.title()
                + ", for a browser to fetch, and the names to save them under:");
        IntStream.rangeClosed(firstYear, lastYear)
                .forEach(year -> messages.result(chosen.address(year) + "  " + saved(chosen.fileName(year))));
        if (output.isPresent()) {
            write(place, chosen, output.get());
            messages.note("the site file is " + output.get().folder().resolve(SiteText.FILE)
                    + "; put the design wind speed of your local code into it, then run "
                    + NextCommand.command(
                            "compare", "my-houses", "--site", output.get().folder(), "--out", "report"));
        }
    }

    private static Station known(String id) {
        return Stations.bundled()
                .of(id)
                .orElseThrow(
                        () -> new BadInput(List.of("--station: " + id + " is not one of the stations in the program")));
    }

    private static String line(PlaceSearch place, Station station) {
        return String.format(
                Locale.ROOT,
                "%5.1f  %s  %s",
                station.location().milesTo(place.location()),
                station.id(),
                station.title());
    }

    private String saved(String name) {
        return output.map(out -> out.folder().resolve(name).toString()).orElse(name);
    }

    private void write(PlaceSearch place, Station chosen, OutputRequest request) throws IOException {
        try (OutputFolder folder = request.open(List.of())) {
            folder.write(
                    SiteText.FILE,
                    Content.of(SiteText.write(place, chosen, IntStream.rangeClosed(firstYear, lastYear))));
            folder.commit(new RunRecord(
                    Version.current(), "site", Map.of("near", near, "station", chosen.id()), new TreeMap<>()));
        }
    }
}
