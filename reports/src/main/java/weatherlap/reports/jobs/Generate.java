package weatherlap.reports.jobs;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.datasets.climate.ClimateCsv;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.generator.HouseGenerator;
import weatherlap.datasets.generator.Mix;
import weatherlap.datasets.portfolio.PortfolioText;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.reports.output.Checksum;
import weatherlap.reports.output.Content;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.sim.house.House;

/**
 * Writes a synthetic portfolio.
 *
 * @param houses how many, 1 or more
 * @param seed the same seed gives the same bytes
 * @param mix file of shares; empty: the bundled one
 * @param climate whether to write the weather of the invented town too
 */
public record Generate(long houses, long seed, Optional<Path> mix, boolean climate, OutputRequest output) {
    /** @throws BadInput with every problem of the mix */
    public void run(Messages messages) throws IOException {
        Mix shares = shares();
        try (OutputFolder folder = output.open(mix.stream().toList())) {
            long openings = writeHouses(folder, new HouseGenerator(shares, seed));
            if (climate) {
                folder.write("climate.csv", Generate::writeClimate);
            }
            Map<String, Object> settings = new LinkedHashMap<>();
            settings.put("houses", houses);
            settings.put("seed", seed);
            settings.put("climate", climate);
            SortedMap<String, String> inputs = new TreeMap<>();
            if (mix.isPresent()) {
                inputs.put("mix/" + mix.get().getFileName(), Checksum.of(mix.get()));
            }
            folder.commit(new RunRecord(Version.current(), "generate", settings, inputs));
            messages.note(houses + " houses with " + openings + " openings are in " + output.folder());
        }
    }

    private Mix shares() {
        if (mix.isEmpty()) {
            return Mix.bundled();
        }
        Loaded<Mix> loaded = Mix.read(mix.get());
        return loaded.value()
                .orElseThrow(() -> new BadInput(
                        loaded.errors().stream().map(Problem::toString).toList()));
    }

    /** Elevations and openings are kept as text until the houses are written: one file is written at a time. */
    private long writeHouses(OutputFolder folder, HouseGenerator generator) throws IOException {
        StringWriter elevations = new StringWriter();
        StringWriter openings = new StringWriter();
        long[] count = new long[1];
        folder.write("houses.csv", out -> {
            Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
            PortfolioText text = new PortfolioText(writer, elevations, openings);
            for (Iterator<House> made = generator.houses(houses).iterator(); made.hasNext(); ) {
                House house = made.next();
                text.add(house);
                count[0] += house.openingCount();
            }
            writer.flush();
        });
        folder.write("elevations.csv", text(elevations));
        folder.write("openings.csv", text(openings));
        return count[0];
    }

    private static Content text(StringWriter text) {
        return out -> {
            Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
            StringBuffer whole = text.getBuffer();
            writer.append(whole);
            writer.flush();
        };
    }

    private static void writeClimate(java.io.OutputStream out) throws IOException {
        Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        for (Iterator<String> lines = ClimateCsv.lines(DemoClimate.hourly()).iterator(); lines.hasNext(); ) {
            writer.write(lines.next());
        }
        writer.flush();
    }
}
