package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a wage, a region and overhead do to the price and the cost of a job, through the commands. */
class WagesTest {
    @TempDir
    private static Path folder;

    private static Path plain;
    private static int runs;

    @BeforeAll
    static void write() throws IOException {
        plain = SmallPortfolio.write(folder.resolve("plain"));
    }

    /** Of house h2 as an insert: price, mean cost, mean person-hours. */
    private record Job(double priceUsd, double costUsd, double hours) {
        static Job of(Path portfolio, String... set) throws IOException {
            Path out = folder.resolve("out" + runs++);
            List<Object> arguments = new ArrayList<>(List.of("compare", portfolio, "--draws", 20, "--out", out));
            for (String change : set) {
                arguments.add("--set");
                arguments.add(change);
            }
            Cli cli = Cli.run(arguments.toArray());
            assertThat(cli.err()).contains("the report is in");
            List<String> rows = Files.readAllLines(out.resolve("houses.csv"));
            List<String> heads = List.of(rows.get(0).split(","));
            String row = rows.stream()
                    .filter(r -> r.startsWith("h2,") && r.contains(",insert,"))
                    .findFirst()
                    .orElseThrow();
            String[] cells = row.split(",", -1);
            return new Job(
                    Double.parseDouble(cells[heads.indexOf("price_usd")]),
                    Double.parseDouble(cells[heads.indexOf("cost_usd_mean")]),
                    Double.parseDouble(cells[heads.indexOf("labour_hours_mean")]));
        }
    }

    /**
     * By hand: a crew of a carpenter and a helper, both paid a dollar more with a burden of a half, costs 1.50 USD more a person-hour;
     * at a margin of 40 % and a service reserve s the price rises by 1.50 h / (0.6 − s), and the cost by 1.50 h and the service on it.
     */
    @Test
    void aDollarMoreAnHourIsInThePrice() throws IOException {
        String[] before = {
            "wage.national.carpenter=30",
            "wage.national.helper=20",
            "burden.national.carpenter=0.5",
            "burden.national.helper=0.5",
            "crew_size=2",
            "gross_margin=0.4",
            "service_reserve=0"
        };
        String[] after = before.clone();
        after[0] = "wage.national.carpenter=31";
        after[1] = "wage.national.helper=21";
        Job less = Job.of(plain, before);
        Job more = Job.of(plain, after);
        assertThat(more.hours()).isEqualTo(less.hours());
        assertThat(more.costUsd() - less.costUsd()).isCloseTo(1.5 * less.hours(), within(0.02));
        assertThat(more.priceUsd() - less.priceUsd()).isCloseTo(1.5 * less.hours() / 0.6, within(0.04));
    }

    /** By hand: overhead is paid for crew hours, person-hours over the crew; at a gross margin the price does not hold it. */
    @Test
    void overheadIsInTheCostAndNotInAPriceMadeByGrossMargin() throws IOException {
        Job less = Job.of(plain, "overhead_usd_per_crew_hour=40", "crew_size=2");
        Job more = Job.of(plain, "overhead_usd_per_crew_hour=50", "crew_size=2");
        assertThat(more.costUsd() - less.costUsd()).isCloseTo(10 * less.hours() / 2, within(0.04));
        assertThat(more.priceUsd()).isEqualTo(less.priceUsd());
    }

    @Test
    void aHousePaysTheWagesOfItsRegion() throws IOException {
        Path dear = inRegion("harbour_county");
        Path cheap = inRegion("upland_county");
        Job inDear = Job.of(dear);
        Job inCheap = Job.of(cheap, "wage.national.carpenter=900");
        assertThat(inCheap.priceUsd()).isLessThan(inDear.priceUsd());
        assertThat(Job.of(plain, "region=harbour_county")).isEqualTo(inDear);
        assertThat(Job.of(cheap, "wage.upland_county.carpenter=90").priceUsd()).isGreaterThan(inDear.priceUsd());
    }

    @Test
    void aRegionWithoutWagesIsBadInput() throws IOException {
        Cli cli = Cli.run("compare", inRegion("atlantis"), "--out", folder.resolve("none"));
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err())
                .contains("houses.csv:2:region: \"atlantis\" is not a region of wages.csv")
                .doesNotContain("\tat ");
    }

    private static Path inRegion(String region) throws IOException {
        Path portfolio = SmallPortfolio.write(folder.resolve(region));
        Path houses = portfolio.resolve("houses.csv");
        List<String> rows = new ArrayList<>();
        for (String row : Files.readAllLines(houses)) {
            rows.add(row + "," + (rows.isEmpty() ? "region" : region));
        }
        Files.writeString(houses, String.join("\n", rows) + "\n");
        return portfolio;
    }
}
