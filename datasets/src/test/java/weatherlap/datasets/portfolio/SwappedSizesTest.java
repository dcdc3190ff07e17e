package weatherlap.datasets.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.datasets.generator.BundledMix;
import weatherlap.datasets.generator.HouseGenerator;
import weatherlap.datasets.generator.Mix;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Portfolio;

/** Widths and heights in each other's place; that made houses are warned of nothing is held by {@link UsualValuesTest}. */
class SwappedSizesTest {
    private static final String HOUSES =
            "house_id,label,year_built,terrain,cladding,barrier,storeys\nh,h,1970,suburban,stucco,unknown,1\n";
    private static final String WALLS = "house_id,elevation_id,bearing_deg,width_ft,eave_height_ft,overhang_in\n"
            + "h,front,180,40,10,12\nh,back,0,40,10,12\n";
    private static final String OPENINGS = "house_id,elevation_id,opening_id,room,operation,frame_width_in,"
            + "frame_height_in,left_in,sill_height_in,existing_material,frame_condition,interior_return,return_layers\n";

    /** Operation, what stands between, width, height. */
    private static final Pattern TURNABLE =
            Pattern.compile("(?<=,)(slider|awning|picture),([^,]*,[^,]*),([0-9.]+),([0-9.]+),");

    /** The messages of some windows: wall, name, operation, width, height, left edge, sill. */
    private static List<String> said(String... windows) {
        StringBuilder rows = new StringBuilder(OPENINGS);
        for (String window : windows) {
            String[] cells = window.split(" ");
            rows.append("h,%s,%s,living,%s,%s,%s,%s,%s,vinyl,sound,drywall,1\n".formatted((Object[]) cells));
        }
        Loaded<Portfolio> read = Portfolios.read(
                Folder.of(Map.of("houses.csv", HOUSES, "elevations.csv", WALLS, "openings.csv", rows.toString())));
        return Stream.concat(read.errors().stream(), read.warnings().stream())
                .map(Problem::toString)
                .toList();
    }

    @Test
    void aHeadOutOfALineThatItWouldBeInIsWarnedOf() {
        String hung = "front a double_hung 36 60 20 40";
        String other = "front b double_hung 32 54 100 46";
        assertThat(said(hung, other, "front c slider 48 36 200 64")).isEmpty();
        assertThat(said(hung, other, "front c slider 36 48 200 64"))
                .containsExactly(
                        "openings.csv:4:frame_height_in: its head is not in line with those of \"a\" in row 2 and"
                                + " others, and would be the other way round; check that width and height are not swapped");
        assertThat(said(hung, "front c slider 36 48 200 64"))
                .as("two are no line")
                .isEmpty();
        assertThat(said(hung, other, "front c slider 60 36 200 40"))
                .as("a sill in line with that of another")
                .isEmpty();
    }

    @Test
    void theSizesOfAnotherTheOtherWayRoundAreWarnedOf() {
        assertThat(said("front a picture 60 48 20 40", "back b picture 48 60 20 40", "back c slider 48 60 120 40"))
                .containsExactly(
                        "openings.csv:3:frame_height_in: the sizes are those of \"a\" in row 2 the other way round;"
                                + " check that width and height are not swapped");
    }

    @Test
    void whatFitsItsWallTheOtherWayRoundIsSaidToBePerhapsSwapped() {
        assertThat(said("front a picture 60 72 20 60"))
                .singleElement()
                .asString()
                .contains(
                        "is above the eave",
                        "the other way round it fits: check that width and height are not swapped");
        assertThat(said("front a picture 60 72 20 90"))
                .singleElement()
                .asString()
                .doesNotContain("swapped");
    }

    /** Of the sliders, awnings and pictures of made houses, turned one at a time, at least half are told of. */
    @ParameterizedTest
    @EnumSource
    void halfOfTheTurnedWindowsOfMadeHousesAreToldOf(BundledMix mix) throws IOException {
        int turned = 0;
        int told = 0;
        for (House house : new HouseGenerator(Mix.bundled(mix), 5).houses(150).toList()) {
            StringBuilder houses = new StringBuilder();
            StringBuilder walls = new StringBuilder();
            StringBuilder openings = new StringBuilder();
            new PortfolioText(houses, walls, openings).add(house);
            for (String row : openings.toString().lines().skip(1).toList()) {
                String other = TURNABLE.matcher(row).replaceFirst("$1,$2,$4,$3,");
                if (!other.equals(row)) {
                    turned++;
                    String all = openings.toString().replace(row, other);
                    Loaded<Portfolio> read = Portfolios.read(Folder.of(Map.of(
                            "houses.csv", houses.toString(), "elevations.csv", walls.toString(), "openings.csv", all)));
                    told += Stream.concat(read.errors().stream(), read.warnings().stream())
                                    .anyMatch(problem -> problem.message().contains("swapped"))
                            ? 1
                            : 0;
                }
            }
        }
        assertThat(turned).isGreaterThan(40);
        assertThat(told).isGreaterThan(turned / 2);
    }
}
