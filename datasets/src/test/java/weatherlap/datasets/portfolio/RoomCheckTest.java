package weatherlap.datasets.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.sim.house.Portfolio;

class RoomCheckTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void template() throws IOException {
        for (String file : PortfolioTables.FILES) {
            Files.write(folder.resolve(file), TemplatePortfolio.bytes(file));
        }
    }

    @Test
    void windowsOfARoomThatDisagreeAreNamed() throws IOException {
        openings("""
                A,living,big,60,200
                B,living,big,120,
                C,kitchen,big,180,200
                D,living,big,240,210
                """);

        assertThat(read().errors())
                .extracting(Object::toString)
                .containsExactly(
                        "openings.csv:4:room: \"kitchen\" differs from \"living\" in row 2 of the same room_id \"big\"",
                        "openings.csv:5:floor_area_ft2: \"210\" differs from \"200\" in row 2 of the same room_id \"big\"");
    }

    @Test
    void oneWindowMayGiveTheFloorForAll() throws IOException {
        openings("""
                A,living,big,60,
                B,living,big,120,200
                C,living,,180,150
                """);

        assertThat(read().orElseThrow().houses().get(0).openings().map(o -> o.place()
                        .roomId()))
                .containsExactly(Optional.of("big"), Optional.of("big"), Optional.empty());
    }

    private Loaded<Portfolio> read() {
        return Portfolios.read(Folder.of(folder), 2026);
    }

    private void openings(String rows) throws IOException {
        StringBuilder text = new StringBuilder(
                "house_id,elevation_id,opening_id,room,room_id,left_in,floor_area_ft2,operation,"
                        + "frame_width_in,frame_height_in,sill_height_in,existing_material,interior_return,return_layers\n");
        rows.lines()
                .forEach(row ->
                        text.append("EXAMPLE,front,").append(row).append(",double_hung,30,48,40,wood,drywall,1\n"));
        Files.writeString(folder.resolve("openings.csv"), text);
    }
}
