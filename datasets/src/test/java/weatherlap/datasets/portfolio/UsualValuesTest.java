package weatherlap.datasets.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.datasets.generator.BundledMix;
import weatherlap.datasets.generator.HouseGenerator;
import weatherlap.datasets.generator.Mix;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Problem;

/** Ordinary houses are warned of nothing; the corpus of bad portfolios holds what is. */
class UsualValuesTest {
    private static void noneIsUnusual(Map<String, String> tables) {
        assertThat(Portfolios.read(Folder.of(tables)).warnings())
                .extracting(Problem::message)
                .noneMatch(message -> message.contains("is unusual") || message.contains("swapped"));
    }

    @ParameterizedTest
    @EnumSource
    void aThousandMadeHousesAreUsual(BundledMix mix) throws IOException {
        StringBuilder houses = new StringBuilder();
        StringBuilder walls = new StringBuilder();
        StringBuilder openings = new StringBuilder();
        PortfolioText text = new PortfolioText(houses, walls, openings);
        new HouseGenerator(Mix.bundled(mix), 11).houses(1000).forEach(house -> {
            try {
                text.add(house);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        noneIsUnusual(Map.of(
                "houses.csv",
                houses.toString(),
                "elevations.csv",
                walls.toString(),
                "openings.csv",
                openings.toString()));
    }

    @Test
    void theDemoIsUsual() throws IOException {
        Map<String, String> tables = new HashMap<>();
        for (String file : PortfolioTables.FILES) {
            try (var in = DemoPortfolio.class.getResourceAsStream("demo/" + file)) {
                tables.put(file, new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        noneIsUnusual(tables);
        tables.merge("elevations.csv", "", (wall, none) -> wall.replaceFirst(",(\\d+),9,", ",$1,90,"));
        assertThat(Portfolios.read(Folder.of(tables)).warnings())
                .extracting(Problem::message)
                .anyMatch(message -> message.contains("is unusual"));
    }
}
