package weatherlap.datasets.assumptions;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.portfolio.StandardJob;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;

/** The standard job with columns of its tables filled in otherwise: {@code cladding=stucco & course_exposure_in=}. */
record KindsOfJob(Path folder) {
    /** @param changes joined by {@code &}; a number of windows cuts the table off after so many */
    House house(String changes) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (String change : changes.isBlank() ? new String[0] : changes.split("&", -1)) {
            String[] sides = change.strip().split("=", -1);
            cells.put(sides[0].strip(), sides[1].strip());
        }
        for (Schema schema : PortfolioTables.ALL) {
            write(schema.file(), cells);
        }
        return Portfolios.read(folder).orElseThrow().houses().get(0);
    }

    /** The bundled tables on a day of so many °F. */
    static Assumptions at(double temperatureF) {
        Assumptions bundled = AssumptionTables.bundled().assumptions();
        return bundled.with(bundled.scenario().with(Scalar.TEMPERATURE_F, temperatureF));
    }

    private void write(String file, Map<String, String> cells) {
        try (InputStream in = StandardJob.folder()
                .find(file, new Problems())
                .orElseThrow()
                .bytes()
                .open()) {
            String[] lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1);
            List<String> head = Arrays.asList(lines[0].split(",", -1));
            List<String> changed = new ArrayList<>(List.of(lines[0]));
            Arrays.stream(lines).skip(1).filter(line -> !line.isEmpty()).forEach(line -> {
                List<String> row = new ArrayList<>(Arrays.asList(line.split(",", -1)));
                cells.forEach((column, cell) -> {
                    if (head.contains(column)) {
                        row.set(head.indexOf(column), cell);
                    }
                });
                changed.add(String.join(",", row));
            });
            Files.writeString(folder.resolve(file), String.join("\n", changed) + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
