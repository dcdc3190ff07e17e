package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SightlineWarningTest {
    @TempDir
    private Path folder;

    /** Whether an insert shows no more glass than a full-flange unit hangs on the rows; rows that break it are named, not refused. */
    @Test
    void rowsThatLetAnInsertShowMoreGlassAreNamed() throws Exception {
        Path portfolio = SmallPortfolio.write(folder.resolve("houses"));
        Path shop = folder.resolve("shop");
        assertThat(Cli.run("assumptions", "--out", shop).status()).isZero();
        assertThat(Cli.run("check", portfolio, "--assumptions", shop).err()).doesNotContain("may show more glass");

        Path sightlines = shop.resolve("sightlines.csv");
        Files.writeString(
                sightlines,
                Files.readString(sightlines)
                        .replaceFirst("insert,vinyl,picture,[0-9.]+,[0-9.]+", "insert,vinyl,picture,0.1,0.1"));

        Cli cli = Cli.run("check", portfolio, "--assumptions", shop);
        assertThat(cli.status()).isZero();
        assertThat(cli.err()).contains("a vinyl picture insert may show more glass than a full-flange unit");
    }
}
